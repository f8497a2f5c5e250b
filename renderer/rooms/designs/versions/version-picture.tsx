import { useMemo } from 'react'
import type { Format } from '../../../app/format.ts'
import { BeadPicture } from '../../../drawing/bead-picture.tsx'
import { highlightLayer } from '../../../drawing/layers/highlight-layer.ts'
import type { Assembly } from '../assembly/assemble.ts'
import { findingLayer } from '../assembly/finding.ts'

/** A version drawn, every bead that the other has otherwise ringed. */
export function VersionPicture({
  title,
  assembly,
  marked,
  format,
}: Readonly<{
  title: string
  assembly: Assembly
  marked: readonly number[]
  format: Format
}>) {
  const layers = useMemo(
    () => [findingLayer(assembly.findings), highlightLayer(marked, 'warn')],
    [assembly, marked],
  )
  const words = `${format.counted(marked.length, 'bead')} of it ringed`
  return (
    <figure className="version-picture">
      <BeadPicture scene={assembly.scene} label={title} description={words} layers={layers} />
      <figcaption>
        <strong>{title}</strong>
        <span>{marked.length === 0 ? 'No bead differs' : words}</span>
      </figcaption>
    </figure>
  )
}
