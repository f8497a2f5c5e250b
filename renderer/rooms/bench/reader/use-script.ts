import { useMemo } from 'react'
import { findForm } from '../../../../shared-core/beads/bead-tables.ts'
import { readerMap } from '../../../../shared-core/bench/reader-place.ts'
import { writeScript } from '../../../../shared-core/bench/write-script.ts'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
import type { Learned } from '../../../../shared-core/design/learned.ts'
import { useBeadTables } from '../../../app/use-bead-tables.ts'
import { assemble } from '../../designs/assembly/assemble.ts'
import type { Fillings, MaterialRow } from '../../designs/page/open-design.ts'
import { slotBeads } from '../../designs/page/slot-beads.ts'
import { beadNameOf } from './telling.ts'
import { toolWords } from './tool-words.ts'

/** Everything the reader shows of a design: its script laid out for the units, its picture, its beads by slot, its tools. */
export function useScript({
  body,
  fillings,
  materials,
  units,
  learned,
}: Readonly<{
  body: DesignBody
  fillings: Fillings
  materials: readonly MaterialRow[]
  units: number
  learned: Learned
}>) {
  const tables = useBeadTables()
  const beads = useMemo(
    () => slotBeads(body.palette, fillings, materials),
    [body, fillings, materials],
  )
  const written = useMemo(
    () => writeScript(body, { ...tables, ...learned }, (slot) => beadNameOf(beads[slot])),
    [body, beads, learned, tables],
  )
  const map = useMemo(
    () => (written.ok ? readerMap(written.value, Math.max(1, units)) : undefined),
    [written, units],
  )
  const assembly = useMemo(() => assemble({ body, tables, looks: beads }), [body, beads, tables])
  const looks = useMemo(
    () =>
      beads.map(({ slot, hex, finish }) => ({
        hex,
        finish,
        family: findForm(tables, slot.formId)?.family ?? ('cylinder' as const),
      })),
    [beads, tables],
  )
  const tools = useMemo(
    () => toolWords(body, { fillings, materials }, tables),
    [body, fillings, materials, tables],
  )
  const refusal = written.ok ? undefined : written.error
  return { map, refusal, beads, looks, assembly, tools }
}
