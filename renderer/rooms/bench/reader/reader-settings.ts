import { z } from 'zod'

/** How this machine's row reader is set; kept here, not in the store: pedals and voices belong to a machine. */
const schema = z.object({
  stride: z.enum(['row', 'step']).catch('row'),
  /** Keys that move on or back beside the usual ones, by their `code`. */
  nextKeys: z.array(z.string()).readonly().catch([]),
  backKeys: z.array(z.string()).readonly().catch([]),
  /** Seconds the timer leaves for a bead. */
  beadS: z.number().min(1).max(120).catch(8),
  idleMin: z.number().min(1).max(120).catch(5),
  /** Minutes between reminders to rest; 0 for none. */
  restMin: z.number().min(0).max(240).catch(25),
  isSpoken: z.boolean().catch(false),
  voice: z.string().catch(''),
  rate: z.number().min(0.5).max(2).catch(1),
})

export type ReaderSettings = Readonly<z.infer<typeof schema>>

const KEY = 'tallystrand.reader'

/** The settings kept on this machine; what is missing or spoilt is as new. */
export function readReaderSettings(): ReaderSettings {
  return schema.parse(parsed(localStorage.getItem(KEY)))
}

/** Keeps the settings for the next time. */
export function keepReaderSettings(settings: ReaderSettings): void {
  localStorage.setItem(KEY, JSON.stringify(settings))
}

function parsed(text: string | null): object {
  try {
    const kept: unknown = JSON.parse(text ?? '{}')
    return typeof kept === 'object' && kept !== null ? kept : {}
  } catch {
    return {}
  }
}
