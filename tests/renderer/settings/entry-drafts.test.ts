import { describe, expect, it } from 'vitest'
import { draftForm, formDraft } from '../../../renderer/rooms/settings/beads/form-draft.ts'
import { draftThread, threadDraft } from '../../../renderer/rooms/settings/beads/thread-draft.ts'
import { referenceTables } from '../../../shared-core/beads/bead-tables.ts'

const { forms, threads } = referenceTables

describe('drafts of bead forms and threads', () => {
  it('say what they were opened with while nothing is typed', () => {
    for (const form of forms)
      expect(form).toMatchObject(draftForm(formDraft(form, ',')) ?? { id: '' })
    for (const thread of threads) {
      expect(thread).toMatchObject(draftThread(threadDraft(thread, ',')) ?? { id: '' })
    }
  })

  it('say nothing until there is a name and every figure can be read', () => {
    const blank = formDraft(undefined, ',')
    expect(draftForm(blank)).toBeUndefined()
    const [form] = forms
    const nameless = { ...formDraft(form, ','), name: '  ' }
    expect(draftForm(nameless)).toBeUndefined()
  })

  it('keep a thread back while its tex cannot be read, and leave tex out where none is given', () => {
    const [thread] = threads
    const draft = threadDraft(thread, ',')
    expect(draftThread({ ...draft, tex: { text: 'heavy', value: undefined } })).toBeUndefined()
    expect(draftThread({ ...draft, tex: { text: ' ', value: undefined } })).not.toHaveProperty(
      'tex',
    )
    expect(draftThread(threadDraft(undefined, ','))).toBeUndefined()
  })
})
