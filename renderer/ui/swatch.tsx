import { useEffect, useRef } from 'react'
import type { BeadLook } from '../drawing/bead-look.ts'
import { paintSwatch } from '../drawing/paint-swatch.ts'
import './swatch.css'

/** What a swatch shows; a cylinder where the form is not known. */
export type SwatchLook = Omit<BeadLook, 'family'> & Partial<Pick<BeadLook, 'family'>>

/** A bead drawn in its colour and finish. Its name always stands beside it: give `name`, or write it yourself. */
export function Swatch({
  look,
  name,
  size = 22,
}: Readonly<{ look: SwatchLook | null; name?: string; size?: number }>) {
  return (
    <span className="swatch">
      <SwatchBead look={look} size={size} />
      {name !== undefined && <span className="swatch-name">{name}</span>}
    </span>
  )
}

function SwatchBead({ look, size }: Readonly<{ look: SwatchLook | null; size: number }>) {
  const canvas = useRef<HTMLCanvasElement>(null)
  const { hex, finish, family = 'cylinder' } = look ?? { hex: undefined, finish: 'opaque' as const }
  useEffect(() => {
    if (canvas.current !== null && hex !== undefined)
      paintSwatch(canvas.current, { hex, finish, family }, size)
  }, [hex, finish, family, size])
  if (look === null) return <span className="swatch-none" aria-hidden="true" />
  return (
    <span className="swatch-bead" aria-hidden="true">
      <canvas ref={canvas} />
    </span>
  )
}
