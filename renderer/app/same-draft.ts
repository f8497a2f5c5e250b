/** Whether what is typed stands as it did: the same value, or a list of the same values. */
export function isSameDraft(before: unknown, now: unknown): boolean {
  if (!Array.isArray(before) || !Array.isArray(now)) return Object.is(before, now)
  return before.length === now.length && before.every((value, at) => Object.is(value, now[at]))
}
