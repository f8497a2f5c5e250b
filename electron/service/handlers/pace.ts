import type { BeadForm } from '../../../shared-core/beads/bead-form.ts'
import { findForm } from '../../../shared-core/beads/bead-tables.ts'
import type { CullCount } from '../../../shared-core/design/learn-culls.ts'
import { readLearning } from '../learned.ts'
import { getRow } from '../store/find-row.ts'
import { toFlag } from '../store/material-rows.ts'
import { workshopTables } from '../store/table-rows.ts'
import type { View } from '../store/view.ts'
import { versionFacts } from '../version-facts.ts'
import type { ActHandler, QueryHandler } from './handler.ts'

export const readPace: QueryHandler<'workshop.pace'> = async (reading) => {
  const { learned, makes, culls, threads } = await readLearning(reading)
  const facts = await versionFacts(
    reading,
    makes.map((make) => make.version_id),
  )
  const names = await designNames(reading)
  const tables = await workshopTables(reading.trx)
  return {
    learned: { ...learned, cullRates: { ...learned.cullRates } },
    sessions: {
      time: makes.filter((make) => make.left_out === 0).length,
      thread: threads.length,
      culls: [...culls.values()].flat().length,
    },
    cullCounts: [...culls].flatMap(([formId, counts]) => {
      const form = findForm(tables, formId)
      return form === undefined ? [] : [countedCulls(form, counts)]
    }),
    makes: makes.flatMap((make) => {
      const known = facts.get(make.version_id)
      if (known === undefined) return []
      return [
        {
          makeId: make.id,
          designName: names.get(known.designId) ?? '',
          unitName: known.unitName,
          units: make.units,
          madeOn: make.made_on,
          benchS: make.bench_s,
          referenceS: Math.round(known.labour.totalS.value * make.units),
          leftOut: make.left_out === 1,
        },
      ]
    }),
  }
}

function countedCulls(form: BeadForm, counts: readonly CullCount[]) {
  return {
    ...{ formId: form.id, formName: form.name, table: form.cullRate },
    handled: counts.reduce((sum, count) => sum + count.handled, 0),
    culled: counts.reduce((sum, count) => sum + count.culled, 0),
  }
}

async function designNames({ trx }: View): Promise<ReadonlyMap<string, string>> {
  const rows = await trx.selectFrom('design').select(['id', 'name']).execute()
  return new Map(rows.map((row) => [row.id, row.name]))
}

export const leaveOutOfPace: ActHandler<'pace.leaveOut'> = async (act, { makeIds, leftOut }) => {
  for (const [at, id] of makeIds.entries()) {
    await getRow(act.trx, 'make', id, `makeIds.${at}`)
    await act.update('make', id, { left_out: toFlag(leftOut) })
  }
  const what = makeIds.length === 1 ? 'a make' : `${makeIds.length} makes`
  const label = leftOut ? `Left ${what} out of the pace` : `Took ${what} into the pace again`
  return { value: {}, label }
}
