import { type Page, test } from '@playwright/test'
import { goTo } from './go-to.ts'
import { press, write } from './journey/controls.ts'
import { labelled, provesLack } from './missing-fields.ts'
import { studioOfFile } from './studio-of-file.ts'

// What the forms of the settings still need.

const studio = studioOfFile()

type Entry = Readonly<{ section: string; add?: string; called?: string; holds?: true }>

const GIVE_IT = 'This figure is still missing. Type it here.'

/** What is entered where, the field that is left or made empty, and what is said of it. */
const forms: Readonly<Record<string, readonly [entry: Entry, field: string, says: string]>> = {
  'the workshop’s hour': [
    { section: 'workshop', holds: true },
    'What an hour of yours costs',
    GIVE_IT,
  ],
  'a channel’s share': [
    { section: 'channels', add: 'Add a channel', called: 'Quay shop', holds: true },
    'It keeps',
    GIVE_IT,
  ],
  'a supplier’s days': [
    { section: 'suppliers', add: 'Add a supplier', called: 'Estuary Glass', holds: true },
    'From order to your door',
    'Say how many days it takes; a guess will do.',
  ],
  'a place without a name': [
    { section: 'places', add: 'Add a place' },
    'Name',
    'Give the place a name, such as Market box.',
  ],
  'a bead form without its figures': [
    { section: 'beads', add: 'Add a bead form', called: 'Tide drop' },
    'Across its hole',
    GIVE_IT,
  ],
}

/** Opens the form of an entry, names it where it is new, and empties the field where it holds something. */
async function openLacking(page: Page, { section, add, called, holds }: Entry, field: string) {
  await goTo(page, `#/settings/${section}`)
  if (add !== undefined) await press(page, add)
  if (called !== undefined) await write(page, 'Name', called)
  if (holds) await labelled(field)(page).fill('')
}

for (const [name, [entry, field, says]] of Object.entries(forms)) {
  test(`${name}: the button leads to what is missing and says so`, () =>
    provesLack(studio().page, {
      ...{ name, button: 'Save', field: labelled(field), says },
      open: (page) => openLacking(page, entry, field),
    }))
}
