/**
 * The words of a step with its lengths of thread as `write` gives them: steps are told in whole mm,
 * and nobody cuts `1413 mm`.
 *
 * @param words of a step, see `benchSteps`; beads' sizes, which are under 100 mm, stay as they are
 * @param write a length in mm as its reader is used to: `1,41 m`
 * @example writeLengths('thread the needle with 1413 mm', inMetres) -> 'thread the needle with 1.41 m'
 */
export function writeLengths(words: string, write: (mm: number) => string): string {
  return words.replace(/\b(\d{3,}) mm\b/g, (_, mm) => write(Number(mm)))
}
