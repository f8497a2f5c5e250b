import { PX_A_MM } from './scale-bead.tsx'

const BAR_MM = 5

/** How long so many mm are in the table. */
export function ScaleBar() {
  const end = BAR_MM * PX_A_MM - 0.5
  return (
    <span className="tables-scale">
      <svg width={BAR_MM * PX_A_MM} height="8" aria-hidden="true">
        <path d={`M.5 0v8M.5 4H${end}M${end} 0v8`} />
      </svg>
      {`${BAR_MM} mm, one scale for all`}
    </span>
  )
}
