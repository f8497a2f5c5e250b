/** The address part of a new order; no order has such an id. */
export const NEW_ORDER = 'new'
