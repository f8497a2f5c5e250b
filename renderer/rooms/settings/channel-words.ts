import type { Channel } from './settings-types.ts'

/** What kinds of channel there are, in the trade's words. */
export const channelKinds: Readonly<Record<Channel['kind'], string>> = {
  market: 'Market',
  web: 'Online',
  consignment: 'Consignment',
  wholesale: 'Wholesale',
  other: 'Other',
}

export const channelKindOptions = (Object.keys(channelKinds) as Channel['kind'][]).map((value) => ({
  value,
  label: channelKinds[value],
}))
