import type { ReactNode } from 'react'

/** A bead of the legend, marked as the beads of the picture are. */
export function LegendChip({
  hex,
  ink,
  children,
}: Readonly<{ hex: string; ink: string; children: ReactNode }>) {
  return (
    <span className="legend-chip" style={{ backgroundColor: hex, color: ink }} aria-hidden="true">
      {children}
    </span>
  )
}
