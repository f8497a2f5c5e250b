/** `tidewrack-chart.csv` begins as Tidewrack. */
export function nameFromFile(fileName: string): string {
  const words = fileName
    .replace(/\.[^.]*$/, '')
    .replace(/[-_]+/g, ' ')
    .replace(/ chart$/i, '')
    .trim()
  return words.charAt(0).toUpperCase() + words.slice(1, 120)
}
