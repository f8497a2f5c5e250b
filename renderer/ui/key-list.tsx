import './key-list.css'

/** A key, or a few, and what it does. */
export type Keys = Readonly<{ keys: string; does: string }>

/** Keys under a heading, each with what it does. */
export function KeyList({ title, keys }: Readonly<{ title: string; keys: readonly Keys[] }>) {
  return (
    <section>
      <h3>{title}</h3>
      <dl className="key-list">
        {keys.map((key) => (
          <div key={key.keys}>
            <dt>
              <kbd>{key.keys}</kbd>
            </dt>
            <dd>{key.does}</dd>
          </div>
        ))}
      </dl>
    </section>
  )
}
