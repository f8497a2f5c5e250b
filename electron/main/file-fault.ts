import type { Refusal } from '../../shared-core/refusal.ts'

const knownFaults: Readonly<Record<string, Omit<Refusal, 'code'>>> = {
  ENOENT: {
    message: 'That file or folder is not there any more.',
    next: 'Choose another place or file.',
  },
  EACCES: {
    message: 'This computer does not let the studio use that file or folder.',
    next: 'Choose a folder of your own.',
  },
  EPERM: {
    message: 'This computer does not let the studio use that file or folder.',
    next: 'Choose a folder of your own.',
  },
  EISDIR: { message: 'That is a folder, not a file.', next: 'Choose a file.' },
  ENOSPC: { message: 'The disk is full.', next: 'Free some space, or choose another disk.' },
  EROFS: { message: 'That disk can only be read.', next: 'Choose another disk.' },
  EBUSY: {
    message: 'Another program holds that file.',
    next: 'Close it there, or choose another name.',
  },
}

/** Says a fault of the file system as a refusal. */
export function fileFault(cause: unknown): Refusal {
  const code = (cause as { code?: unknown } | null)?.code
  const known = typeof code === 'string' ? knownFaults[code] : undefined
  if (known !== undefined) return { code: `file-${String(code).toLowerCase()}`, ...known }
  return {
    code: 'internal',
    message: 'Something went wrong inside the studio.',
    next: 'Try once more. The cause is noted in the studio’s log.',
  }
}
