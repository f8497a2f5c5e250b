import { readdirSync, readFileSync } from 'node:fs'

/**
 * The memory of a process and all its descendants, MiB.
 *
 * Summed over proportional set sizes, in which a page shared by three processes counts a third to
 * each; sums of resident sizes would count it three times. Linux only.
 */
export function proportionalMemoryMiB(root: number): number {
  const parents = new Map(processes().map((pid) => [pid, parentOf(pid)]))
  const family = [...parents.keys()].filter((pid) => descendsFrom(pid, root, parents))
  return family.reduce((total, pid) => total + kibibytesOf(pid), 0) / 1024
}

function processes(): readonly number[] {
  return readdirSync('/proc')
    .filter((name) => /^\d+$/.test(name))
    .map(Number)
}

function parentOf(pid: number): number {
  // The name, in brackets, may hold anything; what follows the last bracket is regular.
  const stat = readOrNothing(`/proc/${pid}/stat`)
  const [, parent] = stat.slice(stat.lastIndexOf(')') + 2).split(' ')
  return Number(parent)
}

function descendsFrom(pid: number, root: number, parents: ReadonlyMap<number, number>): boolean {
  for (let at: number | undefined = pid; at !== undefined && at > 0; at = parents.get(at)) {
    if (at === root) return true
  }
  return false
}

function kibibytesOf(pid: number): number {
  return Number(/^Pss:\s+(\d+) kB/m.exec(readOrNothing(`/proc/${pid}/smaps_rollup`))?.[1] ?? 0)
}

/** A process may end between being listed and being read. */
function readOrNothing(file: string): string {
  try {
    return readFileSync(file, 'utf8')
  } catch {
    return ''
  }
}
