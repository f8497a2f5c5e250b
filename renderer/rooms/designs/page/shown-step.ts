/** A step chosen to be looked at on the thread's route: its part, and the last event it does. */
export type ShownStep = Readonly<{ partId: string; event: number }>
