import type { Plugin } from 'vite'

/**
 * Writes every letter beyond ASCII as an escape. V8 keeps a text with a single such letter at two
 * bytes each, which doubles what a bundle takes in memory for as long as it runs.
 */
export function asciiOnly(): Plugin {
  return {
    name: 'ascii-only',
    enforce: 'post',
    generateBundle(_options, bundle) {
      for (const file of Object.values(bundle)) {
        if (file.type === 'chunk') file.code = escapeBeyondAscii(file.code)
      }
    },
  }
}

/** Holds in strings, templates and patterns; names in our code and in its libraries are ASCII. */
export function escapeBeyondAscii(code: string): string {
  return code.replace(
    /[\u0080-\uffff]/g,
    (letter) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, '0')}`,
  )
}
