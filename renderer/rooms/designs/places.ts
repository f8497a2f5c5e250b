/** Address parts of the ways in for new designs; no design has such an id. */
export const BRING_IN = 'bring-in'
export const NEW = 'new'
/** The view of a design that is its drawing table. */
export const DRAW = 'draw'
/** The view of a design on its way out: sheet and files. */
export const PRINT = 'print'
