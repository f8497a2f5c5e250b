/** The ways to begin a design, in the order of their cards; each has an address `#/designs/new/<way>`. */
export const ways = [
  {
    name: 'blank',
    title: 'Blank',
    says: 'A stitch and a size in mm, inches or beads, every place filled and ready to paint.',
  },
  {
    name: 'outline',
    title: 'Outline',
    says: 'A diamond, drop, leaf or fringe, computed in steps that can be stitched.',
  },
  {
    name: 'picture',
    title: 'Picture',
    says: 'A photograph or drawing, cropped and turned into beads you have in stock.',
  },
  {
    name: 'grid',
    title: 'Grid file',
    says: 'A chart from elsewhere: CSV with a letter a bead, or PNG with a pixel a bead.',
  },
  {
    name: 'words',
    title: 'Word chart',
    says: 'Rows typed or pasted in words, drawn as you go.',
  },
] as const

export type WayName = (typeof ways)[number]['name']

/** The way an address names; `undefined` for the page that shows them all. */
export function wayOf(sub: string | undefined): WayName | undefined {
  return ways.find(({ name }) => name === sub)?.name
}
