import { useMemo } from 'react'
import type { SwatchLook } from '../ui/swatch.tsx'
import { findableActs } from './findable-acts.ts'
import { matchWords } from './match-words.ts'
import { go, type Place } from './place.ts'
import { rooms } from './rooms.ts'
import { useCall } from './use-call.ts'

/** One thing that can be found: what it is, its name, and what choosing it does. */
export type Finding = Readonly<{
  key: string
  kind: 'Room' | 'Act' | 'Design' | 'Material' | 'Order' | 'Piece'
  label: string
  detail: string
  look?: SwatchLook | undefined
  choose: () => void
}>

const MOST_FOUND = 40

/** What answers the typed words, best first. Lists are read when the finder opens, not before. */
export function useFindings(typed: string, onKeys: () => void): readonly Finding[] {
  const things = useThings()
  const acts = useMemo(() => [...roomFindings, ...findableActs(onKeys)], [onKeys])
  return useMemo(() => {
    const all = typed.trim() === '' ? acts : [...acts, ...things]
    return all
      .map((finding) => ({
        finding,
        score: matchWords(typed, `${finding.label} ${finding.detail}`),
      }))
      .filter(({ score }) => score > 0)
      .sort((a, b) => b.score - a.score)
      .slice(0, MOST_FOUND)
      .map(({ finding }) => finding)
  }, [typed, acts, things])
}

const roomFindings: readonly Finding[] = rooms.map(({ name, title, purpose }) => ({
  key: `room ${name}`,
  kind: 'Room',
  label: title,
  detail: purpose,
  choose: () => go({ room: name }),
}))

function useThings(): readonly Finding[] {
  const designs = useCall('designs.list', {}).value?.designs
  const materials = useCall('materials.list', {}).value?.materials
  const orders = useCall('orders.list', { state: 'all' }).value?.orders
  const pieces = useCall('pieces.list', { state: 'all' }).value?.pieces
  return useMemo(
    () => [
      ...(designs ?? []).map((one) =>
        thing('Design', one.id, one.name, one.tags.join(', '), { room: 'designs', id: one.id }),
      ),
      ...(materials ?? []).map((one) => ({
        ...thing('Material', one.id, one.name, one.code, { room: 'stock', id: one.id }),
        look:
          one.colourHex === null
            ? undefined
            : { hex: one.colourHex, finish: one.finish ?? ('opaque' as const) },
      })),
      ...(orders ?? []).map((one) =>
        thing('Order', one.id, one.code, one.customer, { room: 'orders', id: one.id }),
      ),
      ...(pieces ?? []).map((one) =>
        thing('Piece', one.id, one.code, one.designName, { room: 'shelf', id: one.id }),
      ),
    ],
    [designs, materials, orders, pieces],
  )
}

function thing(
  kind: Finding['kind'],
  id: string,
  label: string,
  detail: string,
  place: Place,
): Finding {
  return { key: id, kind, label, detail, choose: () => go(place) }
}
