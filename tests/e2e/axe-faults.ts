import AxeBuilder from '@axe-core/playwright'
import type { Page } from '@playwright/test'

/**
 * What axe finds wrong on the page now, or in one part of it, as `rule: element`, so that a failure
 * says where to look.
 */
export async function axeFaults(page: Page, part = 'html'): Promise<readonly string[]> {
  return found(new AxeBuilder({ page }).include(part), {})
}

/** Contrast alone: all that a change of theme can change. */
export async function contrastFaults(page: Page, part = 'html'): Promise<readonly string[]> {
  return found(new AxeBuilder({ page }).include(part), {
    runOnly: { type: 'rule', values: ['color-contrast'] },
  })
}

type RunOptions = Parameters<AxeBuilder['options']>[0]

async function found(axe: AxeBuilder, rules: RunOptions): Promise<readonly string[]> {
  const { violations } = await axe
    .options({ ...rules, resultTypes: ['violations'] })
    .setLegacyMode(true)
    .analyze()
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(({ target }) => `${id}: ${target.join(' ')}`),
  )
}
