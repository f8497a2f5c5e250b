import type { CallName } from '../../shared-core/contract/calls.ts'

const besidesTheEngine = ['chartFile.preview', 'documents.stop'] as const

/** Calls that need no store at all: they answer without a file, and beside a busy one. */
export type PureName = Extract<CallName, `engine.${string}`> | (typeof besidesTheEngine)[number]

/** Whether a call can be answered without the store; told by the name, before its handler is loaded. */
export function isPure(name: string): name is PureName {
  return name.startsWith('engine.') || besidesTheEngine.some((besides) => besides === name)
}
