/** The one whole unit a material is counted in: mg for beads, mm for thread, pieces for findings and packaging. */
export type MaterialUnit = 'mg' | 'mm' | 'piece'
