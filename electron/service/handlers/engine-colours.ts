import { blockChart } from '../../../shared-core/chart/block-chart.ts'
import { type Chart, slotLabel } from '../../../shared-core/chart/chart.ts'
import { countBeads } from '../../../shared-core/chart/count-slots.ts'
import { threadGapMm } from '../../../shared-core/chart/stitch-pitch.ts'
import { ciede2000 } from '../../../shared-core/colour/ciede2000.ts'
import { type Lab, labOfHex } from '../../../shared-core/colour/lab.ts'
import { nearestBeads } from '../../../shared-core/colour/nearest-beads.ts'
import { chartCells, paintChart } from '../../../shared-core/colour/picture/chart-cells.ts'
import {
  checkPictureRequest,
  MAX_PICTURE_CELLS,
  type PictureRequest,
} from '../../../shared-core/colour/picture/picture-request.ts'
import { pictureToChart } from '../../../shared-core/colour/picture/picture-to-chart.ts'
import { runSteps } from '../../../shared-core/colour/picture/run-steps.ts'
import type { ParsedInput } from '../../../shared-core/contract/calls.ts'
import { refuse } from '../refused.ts'
import { chartOf, sentChart } from './engine-charts.ts'
import { formIn, refuseFirst, tablesWith, threadIn } from './engine-tables.ts'
import type { PureHandler } from './handler.ts'

export const tellLab: PureHandler<'engine.lab'> = ({ colours }) => ({
  colours: colours.map(labOfHex),
})

export const compareColours: PureHandler<'engine.colourDifference'> = ({ pairs }) => ({
  differences: pairs.map(([one, other]) => ciede2000(asLab(one), asLab(other))),
})

function asLab(colour: string | Lab): Lab {
  return typeof colour === 'string' ? labOfHex(colour) : colour
}

type SentBead = ParsedInput<'engine.nearestBeads'>['wanted']

export const findNearest: PureHandler<'engine.nearestBeads'> = ({ wanted, candidates, limit }) => {
  const coloured = ({ colourHex, ...bead }: SentBead) => ({ ...bead, lab: labOfHex(colourHex) })
  const found = nearestBeads(coloured(wanted), candidates.map(coloured), limit)
  return { beads: found.map(({ bead, ...figures }) => ({ id: bead.id, ...figures })) }
}

export const chartPicture: PureHandler<'engine.picture'> = (input) => {
  const chart = chartToPaint(input)
  const checked = checkPictureRequest(requestOf(input, chart))
  if (!checked.ok) return refuseFirst(checked.error)
  const outcome = runSteps(pictureToChart(checked.value))
  if (outcome.kind === 'cancelled') throw new Error('Broken assumption: nobody cancels here')
  const { slots, palette, meanDeltaE, worstDeltaE, recoloured } = outcome.value
  const painted = paintChart(chart, slots)
  return {
    chart: sentChart(painted),
    palette: palette.map((slot, at) => ({ label: slotLabel(at), ...slot })),
    beads: countBeads(painted),
    meanDeltaE,
    worstDeltaE,
    recoloured,
  }
}

function chartToPaint({ onto }: ParsedInput<'engine.picture'>): Chart {
  if (onto.kind === 'chart') return chartOf(onto.chart, 'onto.chart')
  if (onto.columns * onto.rows > MAX_PICTURE_CELLS) {
    return refuse(
      'picture-cells',
      `A chart of ${onto.columns} by ${onto.rows} beads cannot take a picture.`,
      `Choose a chart of 1 to ${MAX_PICTURE_CELLS} cells.`,
      'onto',
    )
  }
  return blockChart(onto.stitch, onto)
}

function requestOf(input: ParsedInput<'engine.picture'>, chart: Chart): PictureRequest {
  const { rgbaBase64, width, height } = input.picture
  const { onto: _, formId, threadId, tables: own, picture: __, ...wishes } = input
  const tables = tablesWith(own)
  const form = formIn(tables, formId)
  const threadMm =
    threadId === undefined ? 0 : threadGapMm(threadIn(tables, threadId).diameterMm.value)
  return {
    ...wishes,
    picture: { rgba: Buffer.from(rgbaBase64, 'base64'), width, height },
    cells: chartCells(chart, form, threadMm),
  }
}
