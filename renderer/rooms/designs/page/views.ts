/** The views of one design, in the order of their tabs; each has an address. */
export const views = [
  { name: 'beads', label: 'Beads' },
  { name: 'thread', label: 'Thread’s route' },
  { name: 'passes', label: 'Passes' },
  { name: 'holes', label: 'Hole fill' },
  { name: 'words', label: 'Words' },
  { name: 'steps', label: 'Steps' },
] as const

export type ViewName = (typeof views)[number]['name']

/** The view an address names; the beads when it names none. */
export function viewOf(sub: string | undefined): ViewName {
  return views.find(({ name }) => name === sub)?.name ?? 'beads'
}
