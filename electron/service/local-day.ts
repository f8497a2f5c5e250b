/** The day on this computer's calendar at a moment, as YYYY-MM-DD. */
export function localDay(atMs: number): string {
  const at = new Date(atMs)
  const two = (part: number) => String(part).padStart(2, '0')
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`
}
