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
  inText = false,
}: Readonly<{
  look: SwatchLook | null
  name?: string
  /** CSS px; with `inText` the pixels it is painted at. */
  size?: number
  /** As high as the letters beside it, whatever their size. */
  inText?: boolean
}>) {
  return (
    <span className="swatch">
      <SwatchBead look={look} size={size} inText={inText} />
      {name !== undefined && <span className="swatch-name">{name}</span>}
    </span>
  )
}

function SwatchBead({
  look,
  size,
  inText,
}: Readonly<{ look: SwatchLook | null; size: number; inText: boolean }>) {
  const canvas = useRef<HTMLCanvasElement>(null)
  const { hex, finish, family = 'cylinder' } = look ?? { hex: undefined, finish: 'opaque' as const }
  useEffect(() => {
    if (canvas.current === null || hex === undefined) return
    paintSwatch(canvas.current, { hex, finish, family }, size)
    if (inText) Object.assign(canvas.current.style, { width: '0.95em', height: '0.95em' })
  }, [hex, finish, family, size, inText])
  if (look === null) return <span className="swatch-none" aria-hidden="true" />
  return (
    <span className="swatch-bead" aria-hidden="true">
      <canvas ref={canvas} />
    </span>
  )
}
