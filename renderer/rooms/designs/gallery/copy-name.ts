const LONGEST = 120

/** A name for a copy that none of the others has: `Tidewrack copy`, `Tidewrack copy 2`. */
export function copyName(name: string, taken: readonly string[]): string {
  const stem = name.replace(/ copy( \d+)?$/, '').slice(0, LONGEST - 12)
  for (let number = 1; ; number += 1) {
    const wanted = number === 1 ? `${stem} copy` : `${stem} copy ${number}`
    if (!taken.includes(wanted)) return wanted
  }
}
