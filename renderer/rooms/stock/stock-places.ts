/** The address part of the spreadsheet's way in; no material has such an id. */
export const BRING_IN = 'bring-in'
