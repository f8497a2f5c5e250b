import type { Page } from '@playwright/test'
import axe, { type AxeResults, type RunOptions } from 'axe-core'

/**
 * What axe finds wrong on the page now, or in one part of it, as `rule: element`, so that a failure
 * says where to look.
 */
export function axeFaults(page: Page, part = 'html'): Promise<readonly string[]> {
  return found(page, part, {})
}

/** Contrast alone: all that a change of theme can change. */
export function contrastFaults(page: Page, part = 'html'): Promise<readonly string[]> {
  return found(page, part, { runOnly: { type: 'rule', values: ['color-contrast'] } })
}

/** Put into a page once and asked for violations only: several times faster than the usual builder. */
async function found(page: Page, part: string, rules: RunOptions): Promise<readonly string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axe.source)
  await page.evaluate(stillness)
  const violations = await page.evaluate(
    async ([where, options]) => {
      const { axe: inPage } = window as unknown as Readonly<{
        axe: { run: (where: string, options: RunOptions) => Promise<AxeResults> }
      }>
      const results = await inPage.run(where, { ...options, resultTypes: ['violations'] })
      return results.violations.map(({ id, nodes }) => ({
        id,
        targets: nodes.map(({ target }) => target.join(' ')),
      }))
    },
    [part, rules] as const,
  )
  return violations.flatMap(({ id, targets }) => targets.map((target) => `${id}: ${target}`))
}

/** Runs in the page: waits until colours that follow a change of theme have arrived. */
async function stillness(): Promise<void> {
  await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)))
  const moving = document
    .getAnimations()
    .filter(({ effect }) => Number.isFinite(effect?.getComputedTiming().endTime))
  await Promise.all(moving.map((one) => one.finished.catch(() => undefined)))
}
