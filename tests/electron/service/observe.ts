import type { Studio } from './open-studio.ts'
import { TODAY } from './open-studio.ts'

/**
 * All that a maker can see of a workshop, but for its history: two states are equal when these are.
 *
 * Lines of ledgers stay when an act is undone, so histories of lots and pieces are left out; all they
 * add up to is here.
 */
export async function observe({ ask }: Studio): Promise<unknown> {
  const { materials } = await ask('materials.list', {})
  const details = []
  for (const { id } of materials) {
    const { movements: _, ...rest } = await ask('materials.read', { id })
    details.push(rest)
  }
  const { designs } = await ask('designs.list', {})
  const put = await ask('designs.list', { archived: true })
  const bodies = []
  for (const { id } of [...designs, ...put.designs]) {
    const whole = await ask('designs.read', { id })
    bodies.push(whole)
    for (const colourway of whole.colourways) {
      bodies.push(await ask('prices.sheet', { designId: id, colourwayId: colourway.id }))
    }
  }
  return {
    workshop: await ask('workshop.read', {}),
    tables: [await ask('tables.list', {}), await ask('tables.own', {})],
    details,
    designs: [designs, put.designs, bodies],
    orders: await ask('orders.list', { state: 'all' }),
    cover: await ask('orders.coverAll', { today: TODAY }),
    pieces: await ask('pieces.list', { state: 'all' }),
    takings: await ask('takings.read', { from: '2020-01-01', to: '2030-12-31' }),
    bench: [
      await ask('bench.list', { state: 'under-way' }),
      await ask('bench.list', { state: 'finished' }),
    ],
    pace: await ask('workshop.pace', {}),
    today: await ask('today.read', { today: TODAY }),
  }
}
