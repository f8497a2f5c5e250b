import { expect } from 'vitest'
import { type CoverRequest, coverOrders, type LineCover } from '../../../shared-core/stock/cover.ts'

/** The cover of a request of a single line. */
export function only(
  request: Partial<CoverRequest> & Pick<CoverRequest, 'lines' | 'lots'>,
): LineCover {
  const covered = coverOrders(request).lines
  expect(covered).toHaveLength(1)
  return covered[0] as LineCover
}
