import { previewChartFile } from './chart-file.ts'
import { stopMaking } from './design-export.ts'
import { readEngine } from './engine.ts'
import type { PureHandler, PureName } from './handler.ts'

/** A handler for every call that needs no store: they answer without a file, and beside a busy one. */
export const pureHandlers: { readonly [N in PureName]: PureHandler<N> } = {
  'engine.read': readEngine,
  'chartFile.preview': previewChartFile,
  'documents.stop': stopMaking,
}
