const KEY = 'tallystrand.fetched'
/** Works remembered, latest first: those before are long finished. */
const WORKS = 40

type TickedWork = Readonly<{ workId: string; lotIds: readonly string[] }>

/** The lots ticked off for some work, kept in this window's own store; none where nothing was kept. */
export function readTicked(workId: string | undefined): ReadonlySet<string> {
  if (workId === undefined) return new Set()
  return new Set(readAll().find((one) => one.workId === workId)?.lotIds)
}

/** Keeps which lots were ticked off, so that nothing is fetched twice. */
export function keepTicked(workId: string, lotIds: ReadonlySet<string>): void {
  const others = readAll().filter((one) => one.workId !== workId)
  const all = [{ workId, lotIds: [...lotIds] }, ...others].slice(0, WORKS)
  localStorage.setItem(KEY, JSON.stringify(all))
}

function readAll(): readonly TickedWork[] {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(KEY) ?? '[]')
    return Array.isArray(kept) ? kept.filter(isTickedWork) : []
  } catch {
    return []
  }
}

function isTickedWork(kept: unknown): kept is TickedWork {
  if (typeof kept !== 'object' || kept === null) return false
  const { workId, lotIds } = kept as Partial<TickedWork>
  return typeof workId === 'string' && Array.isArray(lotIds)
}
