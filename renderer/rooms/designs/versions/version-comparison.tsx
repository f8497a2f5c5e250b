import { useMemo } from 'react'
import { compareDesigns } from '../../../../shared-core/design/compare-designs.ts'
import type { Format } from '../../../app/format.ts'
import { useBeadTables } from '../../../app/use-bead-tables.ts'
import { Notice } from '../../../ui/notice.tsx'
import { Table } from '../../../ui/table.tsx'
import { changeWords } from './change-words.ts'
import { changedBeads } from './changed-beads.ts'
import { type FigureDifference, figureDifferences } from './figure-differences.ts'
import type { VersionShown } from './use-version.ts'
import { VersionPicture } from './version-picture.tsx'

/** Two versions side by side: drawn, told, and their figures. */
export function VersionComparison({
  before,
  after,
  format,
}: Readonly<{ before: VersionShown; after: VersionShown; format: Format }>) {
  const tables = useBeadTables()
  const [old, now] = [before.design, after.design]
  const changes = useMemo(
    () => (old && now ? compareDesigns(old.body, now.body) : undefined),
    [old, now],
  )
  const marks = useMemo(
    () =>
      old && now
        ? {
            before: before.assembly ? changedBeads(before.assembly, old.body, now.body) : [],
            after: after.assembly ? changedBeads(after.assembly, now.body, old.body) : [],
          }
        : undefined,
    [old, now, before.assembly, after.assembly],
  )
  if (old === undefined || now === undefined || changes === undefined || marks === undefined) {
    return <p role="status">Reading both versions…</p>
  }
  return (
    <>
      <div className="version-pictures">
        {before.assembly !== undefined && (
          <VersionPicture
            title={`Version ${old.version}`}
            assembly={before.assembly}
            marked={marks.before}
            format={format}
          />
        )}
        {after.assembly !== undefined && (
          <VersionPicture
            title={`Version ${now.version}`}
            assembly={after.assembly}
            marked={marks.after}
            format={format}
          />
        )}
      </div>
      <div className="version-told">
        <section aria-labelledby="version-changes">
          <h2 id="version-changes">What changed</h2>
          {changes.length === 0 ? (
            <Notice title="Both versions say the same." />
          ) : (
            <ul className="version-changes">
              {changes.map((change) => {
                const words = changeWords(change, {
                  before: old.body,
                  after: now.body,
                  format,
                  tables,
                })
                return <li key={words}>{words}</li>
              })}
            </ul>
          )}
        </section>
        {before.reading !== undefined && after.reading !== undefined && (
          <Differences
            rows={figureDifferences(
              { body: old.body, reading: before.reading },
              { body: now.body, reading: after.reading },
              format,
            )}
            versions={[old.version, now.version]}
          />
        )}
      </div>
    </>
  )
}

function Differences({
  rows,
  versions: [before, after],
}: Readonly<{ rows: readonly FigureDifference[]; versions: readonly [number, number] }>) {
  return (
    <Table
      caption="Figures of both versions"
      captionShown
      rows={rows}
      rowKey={({ label }) => label}
      columns={[
        { key: 'label', head: 'One unit', cell: ({ label }) => label },
        {
          key: 'before',
          head: `Version ${before}`,
          align: 'end',
          cell: (row) => row.before,
        },
        { key: 'after', head: `Version ${after}`, align: 'end', cell: (row) => row.after },
        {
          key: 'difference',
          head: 'Difference',
          align: 'end',
          cell: ({ difference }) =>
            difference === '' ? 'the same' : <strong>{difference}</strong>,
        },
      ]}
    />
  )
}
