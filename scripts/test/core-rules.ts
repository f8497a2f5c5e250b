import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

import { repo } from '../runtime.ts'

const exported = /^export (?:async )?(?:function|const|type|class) (\w+)/
const impure =
  /\bDate\.now\b|\bnew Date\(\)|\bMath\.random\b|\bcrypto\b|\bIntl\b|\.toLocale\w*\(|\blocaleCompare\b/
const mostLines = 300

/** Breaches of what the core promises: every export explained, no clock, no chance, no locale, short files. */
export function coreBreaches(): readonly string[] {
  return filesOf('shared-core').flatMap((file) =>
    breachesIn(file, readFileSync(join(repo, file), 'utf8')),
  )
}

/** The breaches in one file's text; `file` is its path in the repository. */
export function breachesIn(file: string, text: string): readonly string[] {
  const lines = text.trimEnd().split('\n')
  return [...undocumented(file, lines), ...impurities(file, lines), ...tooLong(file, lines)]
}

/** The contract's schemas speak for themselves; its own functions and types are held to it by review. */
function undocumented(file: string, lines: readonly string[]): readonly string[] {
  if (file.startsWith('shared-core/contract/')) return []
  return lines.flatMap((line, index) => {
    const [, name] = exported.exec(line) ?? []
    if (name === undefined) return []
    const before = lines[index - 1] ?? ''
    // Codes set down line by line, and the signatures of one function, share one docstring.
    const sharesOne =
      /^export const \w+ = .*[^{[(]$/.test(before) || before.startsWith(`export function ${name}`)
    if (before.trimEnd().endsWith('*/') || sharesOne) return []
    return [`${file}:${index + 1} ${name} has no docstring`]
  })
}

function impurities(file: string, lines: readonly string[]): readonly string[] {
  return lines.flatMap((line, index) => {
    const code = line.replace(/^\s*(?:\/\/|\*|\/\*).*/, '')
    const [found] = impure.exec(code) ?? []
    return found === undefined ? [] : [`${file}:${index + 1} uses ${found}; take it as an argument`]
  })
}

/** Tables of data may be longer; such a file says why on its first line. */
function tooLong(file: string, lines: readonly string[]): readonly string[] {
  if (lines.length <= mostLines || lines[0]?.startsWith('//') === true) return []
  return [`${file} has ${lines.length} lines, more than ${mostLines}`]
}

function filesOf(folder: string): readonly string[] {
  return readdirSync(join(repo, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => join(folder, name))
    .toSorted()
}
