/**
 * An outline as it hangs: its width at each height, alike on both sides of its middle.
 *
 * `widthAt` takes the height from 0 (top) to 1 (bottom) and gives the width from 0 to 1. It rises
 * from the top to its greatest width, 1, at height `widest`, and falls from there.
 */
export type Profile = Readonly<{ widthAt: (height: number) => number; widest: number }>
