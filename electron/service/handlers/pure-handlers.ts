import type { PureName } from '../pure-names.ts'
import { previewChartFile } from './chart-file.ts'
import { stopMaking } from './design-export.ts'
import { readEngine } from './engine.ts'
import {
  adviseCounting,
  calibrate,
  countByWeight,
  fillHole,
  learn,
  listTables,
  weighCount,
} from './engine-beads.ts'
import { drawOutline, measureChart, readWords, writeWords } from './engine-charts.ts'
import { chartPicture, compareColours, findNearest, tellLab } from './engine-colours.ts'
import type { PureHandler } from './handler.ts'

/** A handler for every call that needs no store: they answer without a file, and beside a busy one. */
export const pureHandlers: { readonly [N in PureName]: PureHandler<N> } = {
  'engine.read': readEngine,
  'engine.tables': listTables,
  'engine.calibrate': calibrate,
  'engine.beadsToCount': adviseCounting,
  'engine.countByWeight': countByWeight,
  'engine.massOfCount': weighCount,
  'engine.holeFill': fillHole,
  'engine.learnPace': learn,
  'engine.geometry': measureChart,
  'engine.writeWords': writeWords,
  'engine.readWords': readWords,
  'engine.outline': drawOutline,
  'engine.lab': tellLab,
  'engine.colourDifference': compareColours,
  'engine.nearestBeads': findNearest,
  'engine.picture': chartPicture,
  'chartFile.preview': previewChartFile,
  'documents.stop': stopMaking,
}
