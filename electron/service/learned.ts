import { findForm } from '../../shared-core/beads/bead-tables.ts'
import { learnPace } from '../../shared-core/design/labour-learning.ts'
import { referencePace } from '../../shared-core/design/labour-pace.ts'
import { type CullCount, learnCullRate } from '../../shared-core/design/learn-culls.ts'
import {
  learnThreadUse,
  type ThreadCount,
  threadAsUsed,
} from '../../shared-core/design/learn-thread-use.ts'
import type { Learned } from '../../shared-core/design/learned.ts'
import { readLabour } from '../../shared-core/design/read-labour.ts'
import { sessionWork } from '../../shared-core/design/session-work.ts'
import type { BenchLog } from './store/bench-rows.ts'
import type { VersionFacts } from './store/facts.ts'
import { workshopTables } from './store/table-rows.ts'
import type { View } from './store/view.ts'
import { versionFacts } from './version-facts.ts'

/** A make whose bench time was kept. */
export type TimedMake = Readonly<{
  id: string
  version_id: string
  units: number
  bench_s: number
  made_on: string
  left_out: number
}>

/** Makes learnt from: hands and habits change, so older ones than these no longer tell. */
const LATEST_MAKES = 200

/** What the workshop has learnt of itself from its latest makes, and the counts it rests on. */
export type Learning = Readonly<{
  learned: Learned
  makes: readonly TimedMake[]
  culls: ReadonlyMap<string, readonly CullCount[]>
  threads: readonly ThreadCount[]
}>

/** Reads what the workshop has learnt; facts of versions stay as the tables have them. */
export async function readLearning(view: View): Promise<Learning> {
  const makes = await timedMakes(view)
  const counted = makes.filter((make) => make.left_out === 0)
  const facts = await versionFacts(
    view,
    counted.map((make) => make.version_id),
  )
  const sessions = counted.flatMap(({ version_id, units, bench_s }) => {
    const known = facts.get(version_id)
    if (known === undefined) return []
    const timed = { work: known.work, own: known.ownSeconds, units, seconds: bench_s }
    return sessionWork(timed, referencePace)
  })
  const logs = await benchLogs(view)
  const tables = await workshopTables(view.trx)
  const culls = Map.groupBy(
    logs.flatMap((log) => log.culls),
    (count) => count.formId,
  )
  const threads = logs.flatMap(({ thread }) => (thread === null ? [] : [thread]))
  return {
    learned: {
      pace: learnPace(sessions, referencePace),
      cullRates: Object.fromEntries(
        [...culls].flatMap(([formId, counts]) => {
          const form = findForm(tables, formId)
          return form === undefined ? [] : [[formId, learnCullRate(form.cullRate, counts)] as const]
        }),
      ),
      threadUse: learnThreadUse(threads),
    },
    makes,
    culls,
    threads,
  }
}

/** A version's facts as this workshop works: its pace and its use of thread instead of the tables'. */
export function factsAsWorked(facts: VersionFacts, { pace, threadUse }: Learned): VersionFacts {
  return {
    ...facts,
    labour: readLabour(facts.work, facts.ownSeconds, pace),
    thread: threadAsUsed(facts.thread, threadUse),
  }
}

function timedMakes({ trx }: View): Promise<TimedMake[]> {
  return trx
    .selectFrom('make')
    .select(['id', 'version_id', 'units', 'bench_s', 'made_on', 'left_out'])
    .where('removed_by', 'is', null)
    .where('bench_s', 'is not', null)
    .where('bench_s', '>', 0)
    .orderBy('made_on', 'desc')
    .orderBy('id', 'desc')
    .limit(LATEST_MAKES)
    .$narrowType<{ bench_s: number }>()
    .execute()
}

async function benchLogs({ trx }: View): Promise<readonly BenchLog[]> {
  const rows = await trx
    .selectFrom('bench_work')
    .innerJoin('make', 'make.id', 'bench_work.make_id')
    .select('bench_work.log_json')
    .where('bench_work.state', '=', 'done')
    .where('bench_work.removed_by', 'is', null)
    .where('make.removed_by', 'is', null)
    .where('make.left_out', '=', 0)
    .orderBy('make.made_on', 'desc')
    .orderBy('make.id', 'desc')
    .limit(LATEST_MAKES)
    .execute()
  return rows.flatMap(({ log_json }) =>
    log_json === null ? [] : [JSON.parse(log_json) as BenchLog],
  )
}
