/** A supplier of the sample and how long it takes. */
export const sampleSuppliers = [
  { key: 'marlow', name: 'Marlow Bead Supply', leadDays: 4, note: 'Posts Monday to Thursday.' },
  { key: 'northgate', name: 'Northgate Findings', leadDays: 6, note: 'Sends nickel statements.' },
  { key: 'quayside', name: 'Quayside Threads', leadDays: 3, note: '' },
] as const

export type SampleSupplierKey = (typeof sampleSuppliers)[number]['key']
