import { memo } from 'react'
import { Icon } from '../../../ui/icon.tsx'
import type { TableModel } from './table-model.ts'
import { tools } from './tools.ts'
import { useTableView } from './use-table-model.ts'

/** The tools, each with its key. */
export const ToolRail = memo(function ToolRail({ model }: Readonly<{ model: TableModel }>) {
  const tool = useTableView(model, (view) => view.tool)
  return (
    <section className="table-tools" aria-label="Tools">
      {tools.map(({ name, label, key, icon, does }) => (
        <button
          key={name}
          type="button"
          className="table-tool"
          aria-pressed={name === tool}
          aria-label={label}
          aria-keyshortcuts={key}
          title={`${label}: ${does} (${key})`}
          onClick={() => model.chooseTool(name)}
        >
          <Icon name={icon} />
          <span className="table-tool-name">{label}</span>
          <kbd>{key}</kbd>
        </button>
      ))}
    </section>
  )
})
