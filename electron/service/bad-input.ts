import type { z } from 'zod'
import type { Refusal } from '../../shared-core/refusal.ts'

type Issue = z.core.$ZodIssue
type Path = readonly PropertyKey[]

/**
 * The refusal of an input that is not what a call accepts: which field, what was found there, what
 * is accepted, in plain words. Of several faults the first is told.
 */
export function badInput(issues: readonly Issue[], input: unknown): Refusal {
  const issue = deepest(issues[0])
  if (issue === undefined) {
    return { code: 'bad-input', message: 'The input cannot be used.', next: 'Try other input.' }
  }
  const extra = issue.code === 'unrecognized_keys' ? issue.keys.slice(0, 1) : []
  const path = [...issue.path, ...extra]
  const field = path.map(String).join('.')
  return {
    code: 'bad-input',
    message: `${placeOf(path)}: ${found(valueAt(input, path))} was found.`,
    next: `Give ${accepted(issue)}.`,
    ...(field === '' ? {} : { field }),
  }
}

/** Of the branches of a union, the fault of the one that came furthest. */
function deepest(issue: Issue | undefined): Issue | undefined {
  if (issue?.code !== 'invalid_union') return issue
  const branches = issue.errors.filter((branch) => branch.length > 0)
  const nearest = branches.toSorted((a, b) => a.length - b.length)[0]
  const inner = deepest(nearest?.[0])
  return inner === undefined ? issue : { ...inner, path: [...issue.path, ...inner.path] }
}

/** `order.lines.1.units` as `Order, lines 2, units`. */
function placeOf(path: Path): string {
  const words = path.reduce<string>((text, step) => {
    if (typeof step === 'number') return `${text} ${step + 1}`
    return text === '' ? spelled(step) : `${text}, ${spelled(step)}`
  }, '')
  return words === '' ? 'The input' : words.charAt(0).toUpperCase() + words.slice(1)
}

function spelled(key: PropertyKey): string {
  return String(key)
    .replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)
    .replace(/ minor$/, ' in minor units')
}

function valueAt(input: unknown, path: Path): unknown {
  return path.reduce<unknown>(
    (value, step) =>
      typeof value === 'object' && value !== null
        ? (value as Record<PropertyKey, unknown>)[step]
        : undefined,
    input,
  )
}

function found(value: unknown): string {
  if (value === undefined) return 'nothing'
  if (value === null) return 'an empty value (null)'
  if (Array.isArray(value)) return `a list of ${value.length}`
  if (typeof value === 'object') return 'a group of fields'
  if (value === '') return 'an empty text'
  const text = typeof value === 'string' ? `“${value}”` : String(value)
  return text.length > 60 ? `${text.slice(0, 58)}…` : text
}

const TYPES: Readonly<Record<string, string>> = {
  int: 'a whole number',
  number: 'a number',
  string: 'a text',
  boolean: 'true or false',
  object: 'a group of fields',
  record: 'a group of fields',
  array: 'a list',
}

function accepted(issue: Issue): string {
  // The contract's own words say it best: `expected a day such as ...`.
  if (/^expected /.test(issue.message)) return issue.message.replace(/^expected /, '')
  switch (issue.code) {
    case 'invalid_type':
      return TYPES[issue.expected] ?? `a value of another kind (${issue.expected})`
    case 'too_small':
      return sized(issue.origin, 'at least', Number(issue.minimum))
    case 'too_big':
      return sized(issue.origin, 'at most', Number(issue.maximum))
    case 'invalid_value':
      return oneOf(issue.values)
    case 'invalid_format':
      return issue.format === 'base64' ? 'the bytes of a file, in base64' : `a ${issue.format}`
    case 'unrecognized_keys':
      return 'only fields this call knows'
    case 'invalid_union':
      return 'options' in issue && Array.isArray(issue.options)
        ? oneOf(issue.options)
        : 'one of the accepted forms'
    case 'invalid_key':
      return 'a shorter key'
    default:
      return 'a value this field accepts'
  }
}

function sized(origin: string, bound: string, limit: number): string {
  if (origin === 'string') return `a text of ${bound} ${limit} characters`
  if (origin === 'array') return `a list of ${bound} ${limit}`
  return `a number of ${bound} ${limit}`
}

function oneOf(values: readonly unknown[]): string {
  const last = values.at(-1)
  const before = values.slice(0, -1)
  return before.length === 0 ? String(last) : `${before.join(', ')} or ${String(last)}`
}
