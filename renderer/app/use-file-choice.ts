import { useEffect, useMemo, useState } from 'react'
import type { Refusal } from '../../shared-core/refusal.ts'
import { type FileBytes, type FileFilter, pickFile } from './files.ts'

/** A file on its way in: what was chosen, and the ways to choose. */
export type FileChoice = Readonly<{
  /** The file and a number that is new for every choice, the same file again included. */
  chosen: Readonly<{ file: FileBytes; turn: number }> | undefined
  refusal: Refusal | undefined
  /** Opens the system's dialog. */
  choose: () => Promise<void>
  /** Takes a file that was dropped or pasted. */
  take: (file: File) => Promise<void>
}>

/** Lets the maker choose a file by dialog, or paste one. `filters` must stay the same list. */
export function useFileChoice(title: string, filters: readonly FileFilter[]): FileChoice {
  const [chosen, setChosen] = useState<FileChoice['chosen']>()
  const [refusal, setRefusal] = useState<Refusal>()
  const ways = useMemo(() => {
    const keep = (file: FileBytes) => {
      setRefusal(undefined)
      setChosen((before) => ({ file, turn: (before?.turn ?? 0) + 1 }))
    }
    return {
      choose: async () => {
        const answer = await pickFile(title, filters)
        if (!answer.ok) setRefusal(answer.error)
        else if (answer.value !== undefined) keep(answer.value)
      },
      take: async (file: File) => {
        if (file.size > MOST_BYTES) setRefusal(tooLarge(file))
        else keep({ fileName: file.name || 'pasted picture.png', base64: await base64Of(file) })
      },
    }
  }, [title, filters])
  usePastedFile(ways.take)
  return { chosen, refusal, ...ways }
}

function usePastedFile(take: (file: File) => Promise<void>): void {
  useEffect(() => {
    const onPaste = (event: ClipboardEvent) => {
      const [file] = event.clipboardData?.files ?? []
      if (file === undefined) return
      event.preventDefault()
      void take(file)
    }
    addEventListener('paste', onPaste)
    return () => removeEventListener('paste', onPaste)
  }, [take])
}

/** As much as the dialog gives. */
const MOST_BYTES = 36 * 1024 * 1024

function tooLarge({ name, size }: File): Refusal {
  return {
    code: 'file-too-large',
    message: `${name} holds ${Math.ceil(size / 1024 / 1024)} MiB.`,
    next: 'Choose a file of at most 36 MiB.',
  }
}

function base64Of(file: File): Promise<string> {
  return new Promise((done, fail) => {
    const reader = new FileReader()
    reader.onload = () => done(String(reader.result).replace(/^[^,]*,/, ''))
    reader.onerror = () => fail(reader.error)
    reader.readAsDataURL(file)
  })
}
