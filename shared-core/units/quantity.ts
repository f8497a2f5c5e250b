declare const unit: unique symbol

/** A number that remembers its unit, so that grams, millimetres and counts cannot be mixed. */
export type Quantity<U extends string> = number & { readonly [unit]: U }

/** A text that remembers what it identifies. */
export type Id<U extends string> = string & { readonly [unit]: U }

/**
 * Brands a whole number; the constructors of the units call it.
 *
 * @throws RangeError when `value` is not a safe integer: a bug, because input is parsed first.
 */
export function wholeQuantity<U extends string>(name: string, value: number): Quantity<U> {
  if (!Number.isSafeInteger(value)) {
    throw new RangeError(`${name}: expected a whole number, got ${value}`)
  }
  // `|| 0` turns -0 into 0, so that equal quantities compare equal.
  return (value || 0) as Quantity<U>
}
