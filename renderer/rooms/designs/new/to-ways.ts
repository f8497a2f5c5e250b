/** One step up from any way in: to the page that shows them all. */
export const toWays = { href: '#/designs/new', label: 'New design' } as const
