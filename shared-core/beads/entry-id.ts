const LONGEST = 50

/**
 * An id for a new entry of the bead or thread tables, from its name: `Tide drop 3 mm` gives
 * `tide-drop-3-mm`.
 *
 * Plain letters, digits and dashes, at most 60 characters; a number is added where the id is taken,
 * and a name without a plain letter or digit gives `own-entry`.
 *
 * @param taken ids that the tables know already
 */
export function entryId(name: string, taken: Iterable<string>): string {
  const known = new Set(taken)
  const stem = stemOf(name)
  if (!known.has(stem)) return stem
  let number = 2
  while (known.has(`${stem}-${number}`)) number += 1
  return `${stem}-${number}`
}

function stemOf(name: string): string {
  const plain = name
    .normalize('NFKD')
    .toLowerCase()
    .replace(/\p{M}/gu, '')
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, LONGEST)
    .replace(/^-+|-+$/g, '')
  return plain === '' ? 'own-entry' : plain
}
