import type { BeadForm } from '../beads/bead-form.ts'
import { joinedWords } from '../design/joined-words.ts'
import type { LaidStrand, ReadyStrand } from '../design/lay-strands.ts'
import { LOOP_ROUNDS } from '../design/lay-strands.ts'
import { panelStepWords } from '../design/panel-step-words.ts'
import { looseJourney, panelJourney } from '../design/read-journey.ts'
import type { ReadContext } from '../design/read-options.ts'
import { routeAsUsed } from '../design/route-as-used.ts'
import type { StitchedPanel } from '../design/stitch-panel.ts'
import { strandStepWords } from '../design/strand-step-words.ts'
import type { JoinedWords, StepWords } from '../route/bench-steps.ts'
import type { EventList } from '../route/event-list.ts'
import { type MirrorBead, mirrorBeads, mirrorRoute } from '../route/mirror-route.ts'
import { holesOf } from '../route/read-fill.ts'
import { type HoleTally, holeTally } from './hole-notes.ts'
import type { ReaderPiece, ReaderStretch } from './reader-script.ts'
import { writeStretch } from './write-stretch.ts'

/** What a bead is called, by its slot's index. */
export type BeadName = (slot: number) => string

type OnePiece = Omit<ReaderPiece, 'copy' | 'copies'>

/** What pieces are written with. */
export type Writing = Readonly<{ context: ReadContext; beadName: BeadName }>

const itself: MirrorBead = (bead) => bead

/** One copy of a panel with every strand that hangs from it, as drawn or as its mirror image. */
export function writePanelPiece(
  { context, beadName }: Writing,
  stitched: StitchedPanel,
  hanging: readonly ReadyStrand[],
  isMirrored: boolean,
): OnePiece {
  const { panel, chart, form, index, draft } = stitched
  const journey = panelJourney(stitched, hanging, context)
  const image = isMirrored ? mirrorBeads(index) : itself
  const seen = (route: EventList, own: MirrorBead) => {
    const used = routeAsUsed(route, context.threadUse)
    return isMirrored ? mirrorRoute(used, own, image) : used
  }
  const words = panelStepWords(chart.stitch, index, context.strands)
  const forms = Array.from(index.slotOf, (slot) => context.formOfSlot(slot, form))
  const tally = tallyOf(context, panel.id, forms)
  const first = writeStretch(
    {
      part: {
        partId: panel.id,
        name: panel.name,
        kind: 'panel',
        copy: 0,
        copies: 1,
        place: undefined,
      },
      route: seen(journey.panelEvents ?? draft.events, image),
      words: isMirrored ? imageWords(words, image) : words,
      nameOf: (bead) => beadName(index.slotOf[image(bead)] ?? 0),
      drawnBead: image,
      slotOf: index.slotOf,
      perBeadS: context.pace.perBeadS[chart.stitch].value,
      perRowS: context.pace.perRowS.value,
    },
    { own: tally, joined: undefined },
  )
  const strands = journey.strands.map((laid, at) =>
    strandStretch({ context, beadName }, laid, {
      copy: journey.strands.slice(0, at).filter(({ ready }) => ready === laid.ready).length,
      route: seen(laid.events, itself),
      joined: { tally, drawnBead: image },
      words: joinedWords(stitched, context.body, isMirrored ? image : undefined),
    }),
  )
  return { partId: panel.id, name: panel.name, isMirrored, stretches: [first, ...strands] }
}

/** The words of a panel asked by the numbers of its image. */
function imageWords(words: StepWords, image: MirrorBead): StepWords {
  const { letterOf, rowNumber, runs } = words
  return {
    ...words,
    letterOf: (bead) => letterOf(image(bead)),
    rowNumber: (bead) => rowNumber(image(bead)),
    runs: runs && {
      first: runs.last.map((_, bead) => image(runs.last[image(bead)] ?? 0)),
      last: runs.first.map((_, bead) => image(runs.first[image(bead)] ?? 0)),
    },
  }
}

/** One copy of a strand that hangs from nothing. */
export function writeLoosePiece(writing: Writing, ready: ReadyStrand): OnePiece {
  const { id, name } = ready.strand
  const stretches = looseJourney(ready, writing.context, LOOP_ROUNDS).strands.map((laid) =>
    strandStretch(writing, laid, {
      copy: 0,
      copies: 1,
      joined: undefined,
      words: undefined,
      route: routeAsUsed(laid.events, writing.context.threadUse),
    }),
  )
  return { partId: id, name, isMirrored: false, stretches }
}

type OneStrand = Readonly<{
  copy: number
  copies?: number
  route: EventList
  joined: Readonly<{ tally: HoleTally; drawnBead: MirrorBead }> | undefined
  /** What the beads of the panel it hangs from are called. */
  words: JoinedWords | undefined
}>

function strandStretch(
  { context, beadName }: Writing,
  { ready, bead }: LaidStrand,
  { copy, copies = ready.strand.copies, route, joined, words }: OneStrand,
): ReaderStretch {
  const { strand, slots, forms } = ready
  const hangs = words !== undefined && joined !== undefined && bead !== undefined
  const place = hangs ? `${words.placeOf(joined.drawnBead(bead))} of ${words.panel}` : undefined
  return writeStretch(
    {
      part: { partId: strand.id, name: strand.name, kind: 'strand', copy, copies, place },
      route,
      words: strandStepWords(slots, context.strands, words),
      nameOf: (bead) => beadName(slots[bead] ?? 0),
      drawnBead: itself,
      slotOf: slots,
      perBeadS: context.pace.perBeadS.strand.value,
      perRowS: 0,
    },
    { own: tallyOf(context, strand.id, forms), joined },
  )
}

function tallyOf(context: ReadContext, partId: string, forms: readonly BeadForm[]): HoleTally {
  const formOf = (bead: number) => forms[bead] ?? neverForm()
  return holeTally(partId, holesOf(forms.length, { ...context, formOf }))
}

function neverForm(): never {
  throw new Error('Broken assumption: every bead has a form')
}
