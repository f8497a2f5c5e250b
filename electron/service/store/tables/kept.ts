/** 0 for no, 1 for yes: the store has no truth values of its own. */
export type Flag = 0 | 1

/** A row that an act may add, change and take away; rows with `removed_by` do not count. */
export type Kept = Readonly<{ id: string; removed_by: string | null }>
