import { z } from 'zod'
import { fileBytes, name, nothing } from './schemas.ts'

/** What a file dialog offers: a plain name and the endings, without a dot. */
const fileFilter = z.strictObject({
  name,
  extensions: z.array(z.string().regex(/^[a-z0-9]{1,8}$/, 'expected an ending such as csv')).min(1),
})

/** The maker closed a dialog without choosing. An outcome, not a refusal. */
const cancelled = z.strictObject({ kind: z.literal('cancelled') })

const savedId = z
  .string()
  .regex(/^saved_[0-9]{1,9}$/, 'expected the id that file.save answered with')

/**
 * Every call that the window's shell answers itself, because it needs a dialog or the window:
 * the twin of the table of service calls, with the same envelope.
 */
export const shellCalls = {
  'file.pick': {
    summary: 'Lets the maker choose a file and gives its bytes.',
    input: z.strictObject({ title: name, filters: z.array(fileFilter).max(10) }),
    output: z.discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('picked'), file: fileBytes }),
      cancelled,
    ]),
  },
  'file.save': {
    summary: 'Lets the maker choose where a made file goes and writes it there.',
    input: z.strictObject({ title: name, file: fileBytes }),
    output: z.discriminatedUnion('kind', [
      z.strictObject({
        kind: z.literal('saved'),
        savedId,
        fileName: z.string(),
        folder: z.string(),
      }),
      cancelled,
    ]),
  },
  'file.show': {
    summary: 'Shows a file saved since the studio opened in its folder.',
    input: z.strictObject({ savedId }),
    output: nothing,
  },
  'file.open': {
    summary: 'Opens a document or picture saved since the studio opened in its usual program.',
    input: z.strictObject({ savedId }),
    output: nothing,
  },
  'file.view': {
    summary:
      'Opens a made document in its usual program, from a place that is emptied when the studio closes.',
    input: z.strictObject({ file: fileBytes }),
    output: nothing,
  },
  'window.setTheme': {
    summary: 'Makes menus, dialogs and the next first paint follow the chosen theme.',
    input: z.strictObject({ theme: z.enum(['light', 'dark', 'system']) }),
    output: nothing,
  },
  'window.keepAwake': {
    summary:
      'Keeps the screen from going dark while the maker reads at the bench, until told not to.',
    input: z.strictObject({ awake: z.boolean() }),
    output: nothing,
  },
  'studio.describe': {
    summary: 'Which version runs, and where it keeps its data.',
    input: nothing,
    output: z.strictObject({
      version: z.string(),
      electron: z.string(),
      dataFile: z.string(),
    }),
  },
} as const satisfies Record<
  string,
  Readonly<{ summary: string; input: z.ZodType; output: z.ZodType }>
>

export type ShellCalls = typeof shellCalls
export type ShellCallName = keyof ShellCalls
/** What the page sends. */
export type ShellCallInput<N extends ShellCallName> = z.input<ShellCalls[N]['input']>
/** What a handler receives after parsing. */
export type ParsedShellInput<N extends ShellCallName> = z.output<ShellCalls[N]['input']>
/** What a call answers with. */
export type ShellCallOutput<N extends ShellCallName> = z.output<ShellCalls[N]['output']>

/** Whether a text names a call of the shell. */
export function isShellCallName(text: string): text is ShellCallName {
  return Object.hasOwn(shellCalls, text)
}
