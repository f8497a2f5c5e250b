import { referenceTables } from '../../shared-core/beads/bead-tables.ts'
import { type OwnTables, tablesWithOwn } from '../../shared-core/beads/own-tables.ts'
import type { BeadTables } from '../../shared-core/beads/user-forms.ts'
import { useCall } from './use-call.ts'

/** The bead forms, threads and needles of this workshop, its own among them. The same object while nothing changes. */
export function useBeadTables(): BeadTables {
  const { value } = useCall('tables.own', {})
  return value === undefined ? referenceTables : tablesOf(value)
}

const merged = new WeakMap<OwnTables, BeadTables>()

/** Merged once for all who ask: pictures and readings are kept as long as this object is the same. */
function tablesOf(own: OwnTables): BeadTables {
  const tables = merged.get(own) ?? tablesWithOwn(own)
  merged.set(own, tables)
  return tables
}
