import type { Answer } from '../../shared-core/contract/calls.ts'
import { createService } from './service.ts'

type Service = Readonly<{
  answer: (name: string, input: unknown) => Promise<Answer<unknown>>
  close: () => Promise<void>
}>

/** The service on a file, with the computer's own clock and its own randomness for ids. */
export function openService(file: string): Promise<Service> {
  return createService({ file, now: Date.now, newId })
}

/** An id such as `mat_3f9k2m7q0x1y`: 12 characters of base 36, about 62 bits. */
export function newId(prefix: string): string {
  // Loaded with the first id: it takes as long as reading the first screen's rows.
  const { randomBytes } = process.getBuiltinModule('node:crypto')
  const digits = [...randomBytes(12)].map((byte) => (byte % 36).toString(36))
  return `${prefix}_${digits.join('')}`
}
