import { afterEach, beforeEach, expect, test } from 'vitest'

import { openSampleStudio, type Studio } from './open-studio.ts'

let studio: Studio
beforeEach(async () => {
  studio = await openSampleStudio()
})
afterEach(() => studio.close())

const steps = async () => (await studio.ask('history.list', { limit: 5 })).entries

async function anyPlace() {
  const { places } = await studio.ask('workshop.read', {})
  const [place] = places
  if (place === undefined) throw new Error('expected the sample to have a place')
  return place
}

test('an act that finds everything as it was says so and leaves no step to take back', async () => {
  const before = await steps()
  const place = await anyPlace()
  const answer = await studio.answer('place.save', { place })
  expect(answer).toEqual({ ok: true, value: { id: place.id }, unchanged: true })
  expect(await steps()).toEqual(before)
})

test('an act that changes something does not say that nothing changed', async () => {
  const before = await steps()
  const place = { ...(await anyPlace()), name: 'Under the stairs' }
  const answer = await studio.answer('place.save', { place })
  expect(answer).toEqual({ ok: true, value: { id: place.id } })
  expect(await steps()).not.toEqual(before)
})
