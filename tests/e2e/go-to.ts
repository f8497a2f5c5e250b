import type { Page } from '@playwright/test'

/** Goes to a place by its address, as a link would: `#/orders/new`. */
export async function goTo(page: Page, hash: string): Promise<void> {
  await page.evaluate((to) => {
    location.hash = to
  }, hash)
}
