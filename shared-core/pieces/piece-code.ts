/** Capital letters that no one takes for a digit or for each other when read aloud or by hand. */
const LETTERS = 'ABCDEFGHJKLMNPRSTUVWXYZ'

/**
 * The two letters that pieces of a design are numbered under: the first letters of its first two
 * words, or of its one word.
 *
 * Letters only, accents dropped; I, O and Q, which look like digits or each other, are passed over;
 * a name without enough letters is filled up with X.
 *
 * @example pieceSeries('Tidewrack diamond') // 'TD'
 * @example pieceSeries('Überflut') // 'UB'
 */
export function pieceSeries(designName: string): string {
  const words = designName
    .normalize('NFD')
    .toUpperCase()
    .split(/[^\p{L}\p{M}]+/u)
    .map((word) => [...word].filter((letter) => LETTERS.includes(letter)))
    .filter((word) => word.length > 0)
  const [first = [], second = []] = words
  const letters = second.length > 0 ? [first[0], second[0]] : first.slice(0, 2)
  return letters.join('').padEnd(2, 'X')
}

/**
 * A piece's code: series, running number of four digits or more, check letter.
 *
 * Short enough to write on a tag by hand, and one letter or digit misread, or two neighbours swapped,
 * never gives another piece's code of the same length.
 *
 * @param series two letters from `pieceSeries`
 * @param serial whole, 1 or more
 * @throws RangeError for a serial that is not such a number or a series that is not such letters
 * @source Weighted sum modulo 23, a prime above every digit and the number of letters; chosen by us
 * @example pieceCode('TD', 7) // 'TD-0007Y'
 */
export function pieceCode(series: string, serial: number): string {
  if (!Number.isSafeInteger(serial) || serial < 1) {
    throw new RangeError(`pieceCode: expected a whole number from 1, got ${serial}`)
  }
  if (!isSeries(series)) throw new RangeError(`pieceCode: expected two letters, got ${series}`)
  const digits = String(serial).padStart(4, '0')
  return `${series}-${digits}${checkLetter(series, digits)}`
}

/** Whether a text is a code whose check letter fits; small letters, spaces and a missing dash are taken. */
export function isPieceCode(text: string): boolean {
  const match = /^([A-Z]{2})-?(\d{4,12})([A-Z])$/.exec(text.toUpperCase().replace(/\s/g, ''))
  const [, series = '', digits = '', check = ''] = match ?? []
  return match !== null && isSeries(series) && checkLetter(series, digits) === check
}

function isSeries(text: string): boolean {
  return text.length === 2 && [...text].every((letter) => LETTERS.includes(letter))
}

/** Each place has its own weight, so that a swap of neighbours changes the sum. */
function checkLetter(series: string, digits: string): string {
  const values = [
    ...[...series].map((letter) => LETTERS.indexOf(letter)),
    ...[...digits].map(Number),
  ]
  const sum = values.reduce((total, value, place) => total + value * (place + 2), 0)
  return LETTERS.charAt(sum % LETTERS.length)
}
