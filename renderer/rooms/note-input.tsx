import { TextArea } from '../ui/text-input.tsx'

/** Characters that a note holds. */
const LONGEST_NOTE = 2_000

type NoteInputProps = Readonly<{
  error: string | undefined
  rows?: number
  value: string
  onChange: (note: string) => void
}>

/** Whatever else is to be remembered of something. */
export function NoteInput(props: NoteInputProps) {
  return <TextArea rows={3} {...props} label="Note" longest={LONGEST_NOTE} optional />
}
