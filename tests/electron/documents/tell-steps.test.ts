import { describe, expect, it } from 'vitest'
import { tellSteps } from '../../../electron/service/documents/pattern-sheet/tell-steps.ts'

describe('tellSteps', () => {
  const step = (row: number, text: string) => ({ row, text, fromEvent: 0, toEvent: 0 })

  it('tells beads that go alike by their letters, and the last bridge again', () => {
    const told = [
      ...tellSteps([
        step(1, 'Row 2 from the left; pick up A, B; under bridge 1 from the edge; up through B'),
        step(1, 'Pick up C; under bridge 2 from the edge; up through C'),
        step(1, 'Pick up C; under bridge 3 from the edge; up through C'),
        step(1, 'Pick up A; under bridge 3 from the edge; up through A'),
      ]),
    ]
    expect(told).toEqual([
      'Row 2 from the left; pick up A, B; under bridge 1 from the edge; up through B. In the same way: 2C. Pick up A; under the same bridge; up through A.',
    ])
  })

  it('names rows together that go like two told before, and tells what lies between', () => {
    const row = (number: number) =>
      step(number, `Row ${number} from the left; pick up ${number}A; left through ${number} beads`)
    const told = [
      ...tellSteps([1, 2, 3, 4].map(row).concat(step(5, 'Thread the needle with 900 mm'))),
    ]
    expect(told.slice(2)).toEqual([
      'Rows 3 to 4 go the same way, with the beads of the word chart.',
      'Thread the needle with 900 mm.',
    ])
  })
})
