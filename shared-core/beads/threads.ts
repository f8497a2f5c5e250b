import { estimated } from '../units/spread.ts'
import type { Thread, ThreadConstruction } from './thread.ts'

type Range = readonly [low: number, value: number, high: number]

function thread(
  id: string,
  name: string,
  construction: ThreadConstruction,
  diameterMm: Range,
  tex?: number,
): Thread {
  const base = { id, name, construction, diameterMm: estimated(...diameterMm) }
  return tex === undefined ? base : { ...base, tex }
}

// biome-ignore format: a table reads best with a row a line
/**
 * The reference threads. Diameters in mm as they lie in a hole, all `estimated`: thread is soft, and
 * labels disagree by a fifth. `tex` is grams per 1000 m, given where the trade states it.
 *
 * @source Braided 6 lb 0.15 to 0.20 mm in several sources; letter sizes mostly trade knowledge.
 */
export const threads: readonly Thread[] = [
  thread('braided-4lb', 'Braided gel-spun 4 lb', 'braided', [0.12, 0.13, 0.15]),
  thread('braided-6lb', 'Braided gel-spun 6 lb', 'braided', [0.15, 0.17, 0.2], 22),
  thread('braided-8lb', 'Braided gel-spun 8 lb', 'braided', [0.17, 0.19, 0.2]),
  thread('braided-10lb', 'Braided gel-spun 10 lb', 'braided', [0.2, 0.21, 0.23]),
  thread('nylon-000', 'Nylon 000', 'twisted', [0.08, 0.085, 0.1]),
  thread('nylon-00', 'Nylon 00', 'twisted', [0.08, 0.095, 0.1]),
  thread('nylon-0', 'Nylon 0', 'twisted', [0.1, 0.12, 0.13]),
  thread('nylon-a', 'Nylon A', 'twisted', [0.12, 0.13, 0.14]),
  thread('nylon-b', 'Nylon B', 'twisted', [0.15, 0.17, 0.2]),
  thread('nylon-d', 'Nylon D', 'flat', [0.2, 0.23, 0.3]),
  thread('nylon-d-bonded', 'Bonded nylon D', 'bonded', [0.18, 0.22, 0.25], 45),
  thread('nylon-f', 'Nylon F', 'twisted', [0.32, 0.36, 0.4]),
  thread('nylon-waxed-b', 'Pre-waxed nylon B', 'flat', [0.15, 0.17, 0.2], 33),
  thread('cord-tex-135', 'Bonded cord tex 135', 'bonded', [0.35, 0.4, 0.45], 135),
  thread('cord-tex-210', 'Bonded cord tex 210', 'bonded', [0.45, 0.5, 0.55], 210),
  thread('cord-tex-400', 'Bonded cord tex 400', 'bonded', [0.8, 0.9, 1.0], 400),
]
