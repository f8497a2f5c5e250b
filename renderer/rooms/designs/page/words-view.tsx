import type { DesignBody } from '../../../../shared-core/design/design.ts'
import { textToBase64 } from '../../../app/base64.ts'
import { saveFile } from '../../../app/files.ts'
import { Button } from '../../../ui/button.tsx'
import { Swatch } from '../../../ui/swatch.tsx'
import { showToast } from '../../../ui/toast-store.ts'
import type { PlainPart } from '../reading/plain-reading.ts'
import { copyText } from './copy-text.ts'
import { howToRead, wordsAsText } from './part-words.ts'
import type { SlotBead } from './slot-beads.ts'
import './words-view.css'

/** The word chart: row by row in the order of work, to read, copy or keep. */
export function WordsView({
  name,
  body,
  parts,
  beads,
}: Readonly<{
  name: string
  body: DesignBody
  parts: readonly PlainPart[] | undefined
  beads: readonly SlotBead[]
}>) {
  if (parts === undefined) return <p role="status">Writing the word chart…</p>
  const text = () => wordsAsText(name, body, parts, beads)
  function copy() {
    const isCopied = copyText(text())
    showToast(
      isCopied
        ? { text: 'The word chart is copied' }
        : { tone: 'refused', text: 'The word chart could not be copied. Save it as text instead.' },
    )
  }
  return (
    <div className="design-sheet words">
      <div className="designs-buttons">
        <Button icon="copy" onClick={copy}>
          Copy
        </Button>
        <Button
          icon="file"
          onClick={() =>
            void saveFile('Save the word chart', {
              fileName: `${name} word chart.txt`,
              base64: textToBase64(text()),
            })
          }
        >
          Save as text
        </Button>
      </div>
      <ul className="words-slots" aria-label="Slots">
        {beads.map(({ slot, material, hex, finish }) => (
          <li key={slot.label} className="slot-name">
            <span className="slot-letter">{slot.label}</span>
            <Swatch look={{ hex, finish }} name={material?.name ?? slot.name} />
          </li>
        ))}
      </ul>
      <p className="words-how designs-quiet">{howToRead}</p>
      {parts.map((part) => (
        <section key={part.partId} className="words-part">
          {parts.length > 1 && <h2>{body.parts.find(({ id }) => id === part.partId)?.name}</h2>}
          <ol>
            {part.words.map((line, at) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: lines stand in the order of work and two may read alike
              <li key={at}>{line}</li>
            ))}
          </ol>
        </section>
      ))}
    </div>
  )
}
