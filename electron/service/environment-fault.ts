import type { Refusal } from '../../shared-core/refusal.ts'

/** Faults of the machine by the code the system or the database gives, with what to do. */
const FAULTS: readonly (readonly [code: RegExp, fault: Refusal])[] = [
  [
    /^(SQLITE_FULL|ENOSPC)/,
    {
      code: 'disk-full',
      message: 'The disk is full; nothing was changed.',
      next: 'Free some space, then try again.',
    },
  ],
  [
    /^SQLITE_(BUSY|LOCKED)/,
    {
      code: 'file-busy',
      message: 'Another program is using the workshop file; nothing was changed.',
      next: 'Close the other program (a backup or sync program, perhaps), then try again.',
    },
  ],
  [
    /^(SQLITE_READONLY|SQLITE_PERM|SQLITE_AUTH|EACCES|EPERM|EROFS)/,
    {
      code: 'file-not-writable',
      message: 'The workshop file may not be written to; nothing was changed.',
      next: 'Allow writing to the file and its folder, or keep it elsewhere.',
    },
  ],
  [
    /^(SQLITE_CANTOPEN|ENOENT|ENOTDIR)/,
    {
      code: 'file-not-reached',
      message: 'The workshop file cannot be reached.',
      next: 'Check that its folder exists and its drive is connected, then try again.',
    },
  ],
  [
    /^(SQLITE_CORRUPT|SQLITE_NOTADB)/,
    {
      code: 'damaged-file',
      message: 'The workshop file is damaged.',
      next: 'Open your latest backup, and keep the damaged file: much of it can often be read.',
    },
  ],
  [
    /^(SQLITE_IOERR|EIO)/,
    {
      code: 'disk-fault',
      message: 'The disk did not read or write; the last step was not kept.',
      next: 'Check the drive, make a backup elsewhere, then try again.',
    },
  ],
]

/** What a fault of the machine means for the maker; `undefined` for anything that is no such fault. */
export function environmentFault(cause: unknown): Refusal | undefined {
  const code = codeOf(cause)
  return FAULTS.find(([pattern]) => pattern.test(code))?.[1]
}

function codeOf(cause: unknown): string {
  const code = (cause as { code?: unknown } | null)?.code
  return typeof code === 'string' ? code : ''
}
