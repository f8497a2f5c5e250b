import { memo } from 'react'
import { Icon } from '../../../ui/icon.tsx'
import type { TableModel } from './table-model.ts'
import { type ToolName, tools } from './tools.ts'

/** The tools, each with its key. */
export const ToolRail = memo(function ToolRail({
  model,
  tool,
}: Readonly<{ model: TableModel; tool: ToolName }>) {
  return (
    <section className="table-tools" aria-label="Tools">
      {tools.map(({ name, label, key, icon, does }) => (
        <button
          key={name}
          type="button"
          className="table-tool"
          aria-pressed={name === tool}
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
})
