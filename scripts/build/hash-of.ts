import { createHash } from 'node:crypto'
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'

/** A hash over the names and contents of files, and of all files in folders, under `root`. */
export function hashOf(root: string, paths: readonly string[]): string {
  const hash = createHash('sha256')
  for (const path of paths.flatMap((path) => filesUnder(root, path)).toSorted()) {
    hash
      .update(`${path}\0`)
      .update(readFileSync(join(root, path)))
      .update('\0')
  }
  return hash.digest('hex')
}

function filesUnder(root: string, path: string): readonly string[] {
  const full = join(root, path)
  if (!existsSync(full)) return []
  if (!statSync(full).isDirectory()) return [path]
  return readdirSync(full).flatMap((name) => filesUnder(root, join(path, name)))
}
