import type { BenchStep } from '../../../../shared-core/route/route.ts'

/**
 * The bench's steps as paragraphs, one a row: what is done again and again is told once, and rows that
 * go like two told before them are named together. Told as they are asked for: a large part's are not
 * all printed.
 */
export function* tellSteps(steps: readonly BenchStep[]): Generator<string> {
  yield* rowsAlike(paragraphs(byRow(steps)))
}

function* paragraphs(rows: readonly (readonly string[])[]): Generator<string> {
  for (const texts of rows) yield `${inTheSameWay(texts).map(clauses).join('. ')}.`
}

function byRow(steps: readonly BenchStep[]): readonly (readonly string[])[] {
  const rows: { row: number; texts: string[] }[] = []
  for (const { row, text } of steps) {
    const last = rows.at(-1)
    const begins = !/^Pick up/.test(text)
    if (last === undefined || last.row !== row || begins) rows.push({ row, texts: [text] })
    else last.texts.push(text)
  }
  return rows.map(({ texts }) => texts)
}

/** Clauses said twice or more in a row are counted: `hang a warp of 454 mm (23 times)`. */
function clauses(step: string): string {
  const said: { words: string; times: number }[] = []
  for (const words of step.split('; ')) {
    const last = said.at(-1)
    if (last?.words.toLowerCase() === words.toLowerCase()) last.times += 1
    else said.push({ words, times: 1 })
  }
  return said
    .map(({ words, times }) => (times === 1 ? words : `${words} (${times} times)`))
    .join('; ')
}

const PICKED = /^Pick up (\d*[A-Z]{1,4})(?:;|$)/
const LETTERS = /\b\d*[A-Z]{1,4}\b/g

/** Steps that differ from the one before in their beads, and in a bridge that is the next one, by their beads alone. */
function inTheSameWay(texts: readonly string[]): readonly string[] {
  const told: string[] = []
  let beads: string[] = []
  const flush = () => {
    if (beads.length > 0) told.push(`In the same way: ${runs(beads)}`)
    beads = []
  }
  texts.forEach((words, i) => {
    const picked = PICKED.exec(words)?.[1]
    const before = texts[i - 1]
    if (picked !== undefined && before !== undefined && goesOn(before, words)) beads.push(picked)
    else {
      flush()
      const isSame = before !== undefined && bridge(words) > 0 && bridge(words) === bridge(before)
      told.push(isSame ? words.replace(BRIDGE, 'the same bridge') : words)
    }
  })
  flush()
  return told
}

const BRIDGE = /bridge (\d+) from the edge/

/** The bridge a step goes under, 0 for none. */
function bridge(step: string): number {
  return Number(BRIDGE.exec(step)?.[1] ?? 0)
}

function goesOn(before: string, words: string): boolean {
  const form = (step: string) => step.replace(LETTERS, 'X').replace(/bridge \d+/, 'bridge')
  const isNext = bridge(words) === 0 || bridge(words) === bridge(before) + 1
  const tail = (step: string) => form(step).replace(/^.*?pick up X(, X)*/i, '')
  return isNext && tail(before) === tail(words)
}

function runs(beads: readonly string[]): string {
  const said: { bead: string; times: number }[] = []
  for (const bead of beads) {
    const last = said.at(-1)
    if (last?.bead === bead) last.times += 1
    else said.push({ bead, times: 1 })
  }
  return said.map(({ bead, times }) => (times === 1 ? bead : `${times}${bead}`)).join(', ')
}

const ROW = /^Row (\d+) /
/** A way of going is told in full this often: once from each side. */
const TOLD = 2

function* rowsAlike(rows: Iterable<string>): Generator<string> {
  const known = new Map<string, number>()
  let alike: string[] = []
  for (const words of rows) {
    const row = ROW.exec(words)?.[1]
    const way = wayOf(words)
    const times = known.get(way) ?? 0
    if (row !== undefined && times >= TOLD) {
      alike.push(row)
      continue
    }
    yield* sameWay(alike)
    alike = []
    known.set(way, times + 1)
    yield words
  }
  yield* sameWay(alike)
}

function sameWay(rows: readonly string[]): readonly string[] {
  const [first, last] = [rows[0], rows.at(-1)]
  if (first === undefined) return []
  const words = rows.length === 1 ? `Row ${first} goes` : `Rows ${first} to ${last} go`
  return [`${words} the same way, with the beads of the word chart.`]
}

/** What a row does, whatever its beads, its number and its side. */
function wayOf(words: string): string {
  return words
    .replace(/\. In the same way: [^.;]*/g, '')
    .replace(LETTERS, 'X')
    .replace(/X(, X)+/g, 'X')
    .replace(/ \(\d+ times\)/g, '')
    .replace(/(?<!bridge )\d+/g, '#')
    .replace(/\b(left|right)\b/g, 'side')
}
