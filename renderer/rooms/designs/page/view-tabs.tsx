import { hrefTo } from '../../../app/place.ts'
import { type PlanName, plans, type ViewName, views } from './views.ts'

/** The views of a design as links, so that each can be gone back to. */
export function ViewTabs({ id, view }: Readonly<{ id: string; view: ViewName | PlanName }>) {
  return (
    <nav className="design-views" aria-label="Views of the design">
      {[...views, ...plans].map(({ name, label }) => (
        <a
          key={name}
          href={hrefTo({ room: 'designs', id, sub: name })}
          aria-current={name === view ? 'page' : undefined}
        >
          {label}
        </a>
      ))}
    </nav>
  )
}
