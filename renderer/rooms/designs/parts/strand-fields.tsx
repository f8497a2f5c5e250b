import type { DesignBody, Panel, Strand } from '../../../../shared-core/design/design.ts'
import { parseStrandBeads } from '../../../../shared-core/stitches/strand/parse-strand-beads.ts'
import { parseCount } from '../../../../shared-core/units/parse-count.ts'
import type { Format } from '../../../app/format.ts'
import { refusalWords } from '../../../ui/refusal-words.ts'
import { SegmentedChoice } from '../../../ui/segmented-choice.tsx'
import { Select } from '../../../ui/select.tsx'
import { beadsInRow, rowWithBeads } from './anchor-rows.ts'
import { KeptFigure, KeptText } from './kept-field.tsx'

const NOTHING = ''

type StrandFieldsProps = Readonly<{
  strand: Strand
  body: DesignBody
  format: Format
  onChange: (label: string, strand: Strand) => void
  /** The strand while its beads are being typed; `undefined` when that is over. */
  onTry: (strand: Strand | undefined) => void
}>

/** Beads on a thread: which, how they hang, from where, and what they carry. */
export function StrandFields({ strand, body, format, onChange, onTry }: StrandFieldsProps) {
  const { name, shape, beads, findingId, copies } = strand
  const slots = body.palette.length
  const findings = body.extras.filter(({ kind }) => kind === 'finding')
  return (
    <>
      <KeptText
        label="Name of the strand"
        value={name}
        longest={120}
        refuse={(text) => (text.trim() === '' ? 'A part needs a name.' : undefined)}
        onKeep={(next) => onChange(`Rename ${name}`, { ...strand, name: next })}
      />
      <SegmentedChoice
        label="How it hangs"
        value={shape}
        options={[
          { value: 'fringe', label: 'Fringe' },
          { value: 'loop', label: 'Loop' },
        ]}
        onChange={(next) => onChange(`Make ${name} a ${next}`, { ...strand, shape: next })}
      />
      <KeptText
        label="Its beads, from the panel outwards"
        hint="Runs of a number and a slot, such as 12A 1B"
        value={beads}
        longest={20_000}
        refuse={(text) => {
          const read = parseStrandBeads(text, slots)
          return read.ok ? undefined : refusalWords(read.error)
        }}
        onTry={(text) => {
          const read = text === undefined ? undefined : parseStrandBeads(text, slots)
          onTry(read?.ok === true ? { ...strand, beads: read.value.beads } : undefined)
        }}
        onKeep={(text) => {
          const read = parseStrandBeads(text, slots)
          if (read.ok && read.value.beads !== beads) {
            onChange(`Change the beads of ${name}`, { ...strand, beads: read.value.beads })
          }
        }}
      />
      <Select
        label="What it carries"
        value={findingId ?? NOTHING}
        options={[
          { value: NOTHING, label: 'Nothing' },
          ...findings.map((extra) => ({ value: extra.id, label: extra.name })),
        ]}
        onChange={(next) => {
          const { findingId: _, ...rest } = strand
          const carried = next === NOTHING ? rest : { ...rest, findingId: next }
          onChange(`What ${name} carries`, carried)
        }}
      />
      <AnchorFields strand={strand} body={body} format={format} onChange={onChange} />
      {shape === 'fringe' && (
        <KeptFigure
          label="Strands side by side"
          hint="Each hangs from the next bead of the row"
          value={copies}
          write={format.count}
          parse={(text) => parseCount(text, { decimal: format.decimal })}
          range={[1, 1_000]}
          onKeep={(next) => onChange(`Copies of ${name}`, { ...strand, copies: next ?? copies })}
        />
      )}
    </>
  )
}

/** The bead a strand hangs from: its panel, its row from the top and its place from the left, counted from 1. */
function AnchorFields({ strand, body, format, onChange }: Omit<StrandFieldsProps, 'onTry'>) {
  const { name, anchor } = strand
  const panels = body.parts.filter((part): part is Panel => part.kind === 'panel')
  const panel = panels.find(({ id }) => id === anchor?.panelId)
  const count = (text: string) => parseCount(text, { decimal: format.decimal })
  const hang = (next: NonNullable<Strand['anchor']>) =>
    onChange(`Hang ${name} elsewhere`, { ...strand, anchor: next })
  return (
    <>
      <Select
        label="Hangs from"
        value={anchor?.panelId ?? NOTHING}
        options={[
          { value: NOTHING, label: 'Nothing: a piece of its own' },
          ...panels.map((one) => ({ value: one.id, label: one.name })),
        ]}
        onChange={(next) => {
          const { anchor: _, ...rest } = strand
          const found = panels.find(({ id }) => id === next)
          if (found === undefined) onChange(`Hang ${name} from nothing`, rest)
          else hang({ panelId: next, row: rowWithBeads(found), bead: 0 })
        }}
      />
      {anchor !== undefined && panel !== undefined && (
        <>
          <div className="designs-pair">
            <KeptFigure
              label="Row from the top"
              value={anchor.row + 1}
              write={format.count}
              parse={count}
              range={[1, panel.chart.rows.length]}
              onKeep={(row) => {
                const next = (row ?? 1) - 1
                const last = Math.max(0, beadsInRow(panel, next) - 1)
                hang({ ...anchor, row: next, bead: Math.min(anchor.bead, last) })
              }}
            />
            <KeptFigure
              label="Bead from the left"
              value={anchor.bead + 1}
              write={format.count}
              parse={count}
              range={[1, Math.max(1, beadsInRow(panel, anchor.row))]}
              onKeep={(bead) => hang({ ...anchor, bead: (bead ?? 1) - 1 })}
            />
          </div>
          <p className="designs-quiet">Or choose the bead on the drawing.</p>
        </>
      )}
    </>
  )
}
