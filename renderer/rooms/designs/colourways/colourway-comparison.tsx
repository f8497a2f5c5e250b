import { useMemo, useState } from 'react'
import type { Format } from '../../../app/format.ts'
import { BeadPicture } from '../../../drawing/bead-picture.tsx'
import { Select } from '../../../ui/select.tsx'
import { Table } from '../../../ui/table.tsx'
import { findingLayer } from '../assembly/finding.ts'
import type { DesignDetail, MaterialRow } from '../page/open-design.ts'
import type { PlainReading } from '../reading/plain-reading.ts'
import { signed } from '../versions/figure-differences.ts'
import {
  countsByKey,
  type MaterialDifference,
  materialDifferences,
  type Standing,
} from './standing.ts'
import { usePiece } from './use-piece.ts'

type ColourwayComparisonProps = Readonly<{
  design: DesignDetail
  standings: readonly Standing[]
  materials: readonly MaterialRow[]
  reading: PlainReading | undefined
  format: Format
}>

/** Two colourways enlarged side by side, and the materials in which they differ. */
export function ColourwayComparison(props: ColourwayComparisonProps) {
  const { design, standings, reading, format } = props
  const [ids, setIds] = useState<readonly [string, string]>(() => [
    standings[0]?.id ?? '',
    standings[1]?.id ?? '',
  ])
  const options = standings.map(({ id, name }) => ({ value: id, label: name }))
  const one = standings.find(({ id }) => id === ids[0]) ?? standings[0]
  const other = standings.find(({ id }) => id === ids[1]) ?? standings.at(-1)
  if (one === undefined || other === undefined) return null
  return (
    <section className="colourway-comparison" aria-label="Two colourways compared">
      <div className="version-choice">
        <Select
          label="Compare"
          value={one.id}
          options={options}
          onChange={(id) => setIds([id, other.id])}
        />
        <Select
          label="with"
          value={other.id}
          options={options}
          onChange={(id) => setIds([one.id, id])}
        />
      </div>
      <div className="version-pictures">
        <Enlarged {...props} standing={one} />
        <Enlarged {...props} standing={other} />
      </div>
      <Differences
        rows={materialDifferences([one, other], countsByKey(reading?.counts ?? []))}
        pair={[one, other]}
        unitName={design.body.unitName}
        format={format}
      />
    </section>
  )
}

function Enlarged({
  design,
  standing,
  materials,
}: ColourwayComparisonProps & Readonly<{ standing: Standing }>) {
  const { assembly } = usePiece(design.versionId, design.body, standing.materials, materials)
  const drawn = useMemo(() => assembly(), [assembly])
  const layers = useMemo(() => (drawn === undefined ? [] : [findingLayer(drawn.findings)]), [drawn])
  if (drawn === undefined) return null
  const beads = standing.lines.filter(({ kind }) => kind === 'bead')
  return (
    <figure className="version-picture">
      <BeadPicture
        scene={drawn.scene}
        label={standing.name}
        description={beads.map(({ materialName, name }) => materialName ?? name).join(', ')}
        layers={layers}
      />
      <figcaption>
        <strong>{standing.name}</strong>
      </figcaption>
    </figure>
  )
}

function Differences({
  rows,
  pair: [one, other],
  unitName,
  format,
}: Readonly<{
  rows: readonly MaterialDifference[]
  pair: readonly [Standing, Standing]
  unitName: string
  format: Format
}>) {
  const beads = (count: number) => (count === 0 ? '' : format.count(count))
  const cost = (minor: number | null) =>
    minor === null ? 'not known' : minor === 0 ? '' : format.money(minor)
  return (
    <Table
      caption={`What a ${unitName} takes otherwise`}
      captionShown
      rows={rows}
      rowKey={({ materialId }) => materialId}
      empty={<p className="designs-quiet">Both take the same beads and materials.</p>}
      columns={[
        { key: 'name', head: 'Material', width: '11rem', cell: ({ name }) => name },
        { key: 'a', head: `Beads, ${one.name}`, align: 'end', cell: (row) => beads(row.beads[0]) },
        {
          key: 'b',
          head: `Beads, ${other.name}`,
          align: 'end',
          cell: (row) => beads(row.beads[1]),
        },
        {
          key: 'c',
          head: `Cost, ${one.name}`,
          align: 'end',
          cell: (row) => cost(row.costMinor[0]),
        },
        {
          key: 'd',
          head: `Cost, ${other.name}`,
          align: 'end',
          cell: (row) => cost(row.costMinor[1]),
        },
        {
          key: 'e',
          head: 'Difference',
          align: 'end',
          cell: ({ costMinor: [x, y] }) =>
            x === null || y === null ? '' : signed(x, y, format.money),
        },
      ]}
      foot={{
        name: 'All materials',
        c: format.money(one.costMinor),
        d: format.money(other.costMinor),
        e: signed(one.costMinor, other.costMinor, format.money) || 'the same',
      }}
    />
  )
}
