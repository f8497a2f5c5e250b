import { type Bound, bounds, type Validation, validations } from './thread-validation.ts'

/** How far a numeric prediction may lie from the published length. */
export const TOLERANCE = 0.15

/** The page that sets predicted thread against published lengths, as Markdown. */
export function validationPage(): string {
  return `# Thread: predicted against published

Made by \`npx node scripts/thread-validation.ts\`; \`npm run bench\` prints the same figures, and a test
holds this page to them. Every length is computed by the route of a chart drawn for the piece: straight runs between hole
ends, bends round bridges, one slack a stitch and thread type (\`shared-core/route/thread-slack.ts\`).
Nothing is fitted to single rows. Cut lengths are published with their tails; they are usually rounded
up to a handy length.

## Pieces whose beads are known

Wanted: every row within ${Math.round(TOLERANCE * 100)} %.

| piece | stitch | beads | published mm | predicted mm | error | drawn as |
| --- | --- | ---: | ---: | ---: | ---: | --- |
${validations().map(numericLine).join('\n')}

Where the model is weakest: the ladder's source works with half a two-yard thread and adds more when it
runs out, so its length is a lower bound for the whole; the herringbone piece is a tube of which the
chart lays only the flat picture, without joining the ring or stepping up each round, and its
length is one yard whatever the piece takes.

## Pieces that only bound the model

The sources give grams bought, or leave out bead or size. A row is kept when the published length lies within
what the least and the most of their readings would take.

| piece | published mm | least reading mm | most reading mm | kept | what was assumed |
| --- | ---: | ---: | ---: | --- | --- |
${bounds().map(boundLine).join('\n')}
`
}

function numericLine({ id, stitch, beads, statedMm, predictedMm, remark }: Validation): string {
  const error = (100 * (predictedMm - statedMm)) / statedMm
  const signed = `${error < 0 ? '−' : '+'}${Math.abs(error).toFixed(1)} %`
  return `| ${id} | ${stitch} | ${beads} | ${statedMm} | ${predictedMm} | ${signed} | ${remark} |`
}

function boundLine(bound: Bound): string {
  const { id, statedMm, leastMm, mostMm, remark } = bound
  const stated = statedMm[0] === statedMm[1] ? `${statedMm[0]}` : `${statedMm[0]} to ${statedMm[1]}`
  return `| ${id} | ${stated} | ${leastMm} | ${mostMm} | ${isKept(bound) ? 'yes' : 'no'} | ${remark} |`
}

/** Whether a published length lies within what the source's readings would take. */
export function isKept({ statedMm, leastMm, mostMm }: Bound): boolean {
  return statedMm[1] >= leastMm && statedMm[0] <= mostMm
}
