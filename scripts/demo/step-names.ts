/** A step's name with its number: `03 Say what an hour costs`. */
export function numbered(at: number, title: string): string {
  return `${String(at + 1).padStart(2, '0')} ${title}`
}

/** The name of a step's picture: `03-say-what-an-hour-costs.png`. */
export function pictureName(at: number, title: string): string {
  return `${numbered(at, title).toLowerCase().replaceAll(' ', '-')}.png`
}
