import { readFileSync } from 'node:fs'

type Vector = {
  id: string
  tolerance: number
  inputs: Record<string, number> & { n?: number[] }
  expected: Record<string, number> & { worst_rel?: number[] }
}
const vectors = JSON.parse(
  readFileSync(new URL('../../fixtures/vectors/count_by_weight.json', import.meta.url), 'utf8'),
) as Vector[]

/** Published counting problems whose name begins so. */
export const countingVectors = (stem: string) => vectors.filter(({ id }) => id.startsWith(stem))

/** A number of a problem; one that is not there agrees with nothing. */
export const number = (value: number | undefined) => value ?? Number.NaN
