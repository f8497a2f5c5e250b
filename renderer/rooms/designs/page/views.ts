/** The views of one design, in the order of their tabs; each has an address. */
export const views = [
  { name: 'beads', label: 'Beads' },
  { name: 'thread', label: 'Thread’s route' },
  { name: 'passes', label: 'Passes' },
  { name: 'holes', label: 'Hole fill' },
  { name: 'words', label: 'Words' },
  { name: 'steps', label: 'Steps' },
] as const

/** What is worked on beside the drawing itself, each on a screen of its own. */
export const plans = [
  { name: 'parts', label: 'Parts' },
  { name: 'colourways', label: 'Colourways' },
  { name: 'versions', label: 'Versions' },
] as const

export type PlanName = (typeof plans)[number]['name']
export type ViewName = (typeof views)[number]['name']

/** The plan an address names, if it names one. */
export function planOf(sub: string | undefined): PlanName | undefined {
  return plans.find(({ name }) => name === sub)?.name
}

/** The view an address names; the beads when it names none. */
export function viewOf(sub: string | undefined): ViewName {
  return views.find(({ name }) => name === sub)?.name ?? 'beads'
}
