import { openService } from '../../../electron/service/open-service.ts'

// Takes in one lot after the other and says which ones were acknowledged, until it is killed.
const service = await openService(process.argv[2] ?? '')

async function ask(name: string, input: unknown): Promise<Record<string, unknown>> {
  const answer = await service.answer(name, input)
  if (!answer.ok) throw new Error(`${name}: ${answer.error.message}`)
  return answer.value as Record<string, unknown>
}

async function findOrAddMaterial(): Promise<string> {
  const { workshop } = await ask('workshop.read', {})
  if (workshop === null) {
    const beginning = { with: 'empty', name: 'Kill', currency: 'EUR', decimalMark: ',' }
    await ask('workshop.begin', { ...beginning, today: '2026-11-25' })
  }
  const { materials } = await ask('materials.list', {})
  const [first] = materials as { id: string }[]
  if (first !== undefined) return first.id
  const looks = { formId: 'cylinder-11/0', colourHex: null, finish: null, lotsMatter: true }
  const rest = { lowAt: null, tareMg: null, drawer: '', note: '', declaration: '' }
  const material = { code: 'WS', name: 'wet slate', kind: 'bead', ...looks, ...rest }
  return String((await ask('materials.save', { material }))['id'])
}

const materialId = await findOrAddMaterial()
for (;;) {
  const { lotId } = await ask('lots.receive', {
    materialId,
    quantity: 1_000,
    dyeLot: 'K1',
    supplierId: null,
    boughtOn: null,
    costMinor: 100,
    note: '',
  })
  process.stdout.write(`${String(lotId)}\n`)
}
