import type { Refusal } from '../../../../shared-core/refusal.ts'
import { refusalOf } from '../../../app/refusal-error.ts'
import { useAct } from '../../../app/use-act.ts'
import { ask } from '../../../app/use-call.ts'
import { refusalWords } from '../../../ui/refusal-words.ts'
import { showToast } from '../../../ui/toast-store.ts'
import { copyName } from './copy-name.ts'

/** Copies a design with all its colourways under a name of its own; gives the copy's id. */
export function useDuplicate(takenNames: readonly string[]) {
  const save = useAct('designs.save', { said: (_, { name }) => `Added ${name}` })
  const colour = useAct('colourways.save')

  async function duplicate(id: string): Promise<string | undefined> {
    try {
      const { name, tags, body, colourways } = await ask('designs.read', { id })
      const saved = await save.act({ name: copyName(name, takenNames), tags, body, note: '' })
      if (!saved.ok) return refused(saved.error)
      const copy = await ask('designs.read', { id: saved.value.id })
      for (const [at, { name: colourway, materials }] of colourways.entries()) {
        const first = at === 0 ? copy.colourways[0]?.id : undefined
        const filled = await colour.act({
          designId: saved.value.id,
          ...(first === undefined ? {} : { id: first }),
          name: colourway,
          materials,
        })
        if (!filled.ok) return refused(filled.error)
      }
      return saved.value.id
    } catch (error) {
      return refused(refusalOf(error))
    }
  }

  return duplicate
}

function refused(refusal: Refusal): undefined {
  showToast({ tone: 'refused', text: refusalWords(refusal) })
}
