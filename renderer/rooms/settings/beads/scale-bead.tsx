import { useEffect, useRef } from 'react'
import type { BeadFamily } from '../../../../shared-core/beads/bead-form.ts'
import { paintBead } from '../../../drawing/paint-bead.ts'
import { screenRatio } from '../../../drawing/screen-ratio.ts'

/** One scale for all beads of the table, CSS px a mm; what is larger than the place is drawn smaller. */
export const PX_A_MM = 7
const LONGEST_PX = 88

type BeadShape = Readonly<{ family: BeadFamily; diameterMm: number; lengthMm: number }>

/** A bead in true proportion beside all others: its width across the hole, its height along it. Long ones lie. */
export function ScaleBead({ family, diameterMm, lengthMm }: BeadShape) {
  const canvas = useRef<HTMLCanvasElement>(null)
  const lies = family === 'bugle'
  const [wideMm, highMm] = lies ? [lengthMm, diameterMm] : [diameterMm, lengthMm]
  const scale = Math.min(PX_A_MM, LONGEST_PX / Math.max(wideMm, highMm))
  const [width, height] = [wideMm * scale, highMm * scale]
  useEffect(() => {
    const brush = canvas.current?.getContext('2d')
    if (!canvas.current || !brush) return
    const ratio = screenRatio()
    canvas.current.width = Math.ceil((width + 2) * ratio)
    canvas.current.height = Math.ceil((height + 2) * ratio)
    const box = { x: ratio, y: ratio, width: width * ratio, height: height * ratio }
    const look = { hex: BEAD_HEX, finish: 'gloss' as const, family }
    paintBead(brush, look, box, lies ? 'horizontal' : 'vertical')
  }, [family, width, height, lies])
  return (
    <span className="scale-bead" aria-hidden="true">
      <canvas ref={canvas} style={{ width: width + 2, height: height + 2 }} />
    </span>
  )
}

/** Any bead: wet slate, as the sample has it. */
const BEAD_HEX = '#6b7d86'
