import { capital } from '../../../app/capital.ts'

/** `tidewrack-chart.csv` begins as Tidewrack. */
export function nameFromFile(fileName: string): string {
  const words = fileName
    .replace(/\.[^.]*$/, '')
    .replace(/[-_]+/g, ' ')
    .replace(/ chart$/i, '')
    .trim()
  return capital(words.slice(0, 120))
}
