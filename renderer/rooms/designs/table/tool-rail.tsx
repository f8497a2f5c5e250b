import { Icon } from '../../../ui/icon.tsx'
import type { TableModel } from './table-model.ts'
import type { TableView } from './table-state.ts'
import { tools } from './tools.ts'

/** The tools, each with its key. */
export function ToolRail({
  model,
  view,
}: Readonly<{ model: TableModel; view: Pick<TableView, 'tool'> }>) {
  return (
    <section className="table-tools" aria-label="Tools">
      {tools.map(({ name, label, key, icon, does }) => (
        <button
          key={name}
          type="button"
          className="table-tool"
          aria-pressed={name === view.tool}
          aria-keyshortcuts={key}
          title={`${does} (${key})`}
          onClick={() => model.chooseTool(name)}
        >
          <Icon name={icon} />
          <span>{label}</span>
          <kbd>{key}</kbd>
        </button>
      ))}
    </section>
  )
}
