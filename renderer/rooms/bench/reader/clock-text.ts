/** Seconds as a clock shows them: 0:07:30. */
export function clockText(seconds: number): string {
  const whole = Math.max(0, Math.round(seconds))
  const two = (n: number) => String(n).padStart(2, '0')
  return `${Math.floor(whole / 3600)}:${two(Math.floor(whole / 60) % 60)}:${two(whole % 60)}`
}
