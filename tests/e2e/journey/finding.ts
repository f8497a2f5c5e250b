/** One figure: as the screen writes it, as the core computes it from the same inputs, as the store holds it. */
export type Finding = Readonly<{
  what: string
  screen: string
  /** Absent where there is nothing to compute: a name, a sentence. */
  core?: string
  /** Absent where the store does not keep it. */
  store?: string
}>

/** Whether the screen, the core and the store say the same. */
export function agrees({ screen, core = screen, store = screen }: Finding): boolean {
  return screen === core && screen === store
}

/** A finding as a line to read; where the three differ, each with its own word. */
export function findingLine(finding: Finding): string {
  const { what, screen, core, store } = finding
  if (agrees(finding)) return `${what}: ${screen}`
  const others = [
    core === undefined ? '' : `, the core computes “${core}”`,
    store === undefined ? '' : `, the store holds “${store}”`,
  ]
  return `DIFFERS  ${what}: the screen says “${screen}”${others.join('')}`
}
