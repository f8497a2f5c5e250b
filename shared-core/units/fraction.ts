/**
 * An exact quotient of two whole numbers in lowest terms; the denominator is positive.
 *
 * Money and mass are computed in fractions and rounded once, at the end. A fraction lives inside a
 * calculation and never crosses a boundary: JSON cannot carry a bigint.
 */
export type Fraction = Readonly<{ numerator: bigint; denominator: bigint }>

/**
 * The quotient of two whole numbers, reduced: `fraction(10, 4)` is 5/2.
 *
 * @throws RangeError for a zero denominator or a number that is not whole.
 */
export function fraction(numerator: bigint | number, denominator: bigint | number = 1n): Fraction {
  const n = BigInt(numerator)
  const d = BigInt(denominator)
  if (d === 0n) throw new RangeError(`fraction: ${n} over zero`)
  const divisor = greatestCommonDivisor(n, d) * (d < 0n ? -1n : 1n)
  return { numerator: n / divisor, denominator: d / divisor }
}

/** The exact value of a plain decimal such as `-12.50`. @throws RangeError for any other text. */
export function fractionOfDecimal(text: string): Fraction {
  const match = /^(-?)(\d+)(?:\.(\d+))?$/.exec(text)
  if (!match) throw new RangeError(`fractionOfDecimal: expected a plain decimal, got ${text}`)
  const decimals = match[3] ?? ''
  const digits = BigInt(`${match[2]}${decimals}`)
  return fraction(match[1] ? -digits : digits, 10n ** BigInt(decimals.length))
}

/** a + b, exactly. */
export function addFractions(a: Fraction, b: Fraction): Fraction {
  return fraction(
    a.numerator * b.denominator + b.numerator * a.denominator,
    a.denominator * b.denominator,
  )
}

/** a - b, exactly. */
export function subtractFractions(a: Fraction, b: Fraction): Fraction {
  return addFractions(a, { numerator: -b.numerator, denominator: b.denominator })
}

/** a x b, exactly. */
export function multiplyFractions(a: Fraction, b: Fraction): Fraction {
  return fraction(a.numerator * b.numerator, a.denominator * b.denominator)
}

/** a / b, exactly. @throws RangeError when b is zero. */
export function divideFractions(a: Fraction, b: Fraction): Fraction {
  return fraction(a.numerator * b.denominator, a.denominator * b.numerator)
}

/** -1, 0 or 1 as a is below, equal to or above b. */
export function compareFractions(a: Fraction, b: Fraction): -1 | 0 | 1 {
  const difference = a.numerator * b.denominator - b.numerator * a.denominator
  if (difference === 0n) return 0
  return difference < 0n ? -1 : 1
}

/** The sum of the fractions; 0 for none. */
export function sumFractions(fractions: readonly Fraction[]): Fraction {
  return fractions.reduce(addFractions, fraction(0n))
}

/** The nearest floating-point number, for geometry and drawing; never for money or mass. */
export function fractionToNumber(value: Fraction): number {
  const whole = value.numerator / value.denominator
  const rest = value.numerator % value.denominator
  return Number(whole) + Number(rest) / Number(value.denominator)
}

function greatestCommonDivisor(a: bigint, b: bigint): bigint {
  let [x, y] = [a < 0n ? -a : a, b < 0n ? -b : b]
  while (y !== 0n) [x, y] = [y, x % y]
  return x
}
