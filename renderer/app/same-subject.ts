/**
 * Whether two questions are about the same things: every id they name is the same.
 *
 * An answer may then stand in its place until the next one comes: more units of the same design, say,
 * but never another design's figures under this one's name.
 */
export function isSameSubject(one: unknown, other: unknown): boolean {
  const [a, b] = [idsOf(one), idsOf(other)]
  return (
    a.length === b.length &&
    a.every(([field, id], at) => {
      const [otherField, otherId] = b[at] ?? []
      return field === otherField && id === otherId
    })
  )
}

function idsOf(input: unknown): readonly (readonly [string, unknown])[] {
  if (typeof input !== 'object' || input === null) return []
  return Object.entries(input)
    .filter(([field, value]) => /^id$|Id$/.test(field) && value !== undefined)
    .toSorted(([a], [b]) => a.localeCompare(b))
}
