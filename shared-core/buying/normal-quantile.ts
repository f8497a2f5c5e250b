/** Density of the standard normal distribution at z. */
function density(z: number): number {
  return Math.exp(-(z * z) / 2) / Math.sqrt(2 * Math.PI)
}

/** Share of the standard normal distribution below z, by the series of Marsaglia; good to 14 digits for |z| up to 7. */
function shareBelow(z: number): number {
  let term = z
  let sum = z
  for (let n = 3; Math.abs(term) > 1e-17 * Math.abs(sum); n += 2) {
    term *= (z * z) / n
    sum += term
  }
  return 0.5 + sum * density(z)
}

/**
 * The value that a share `p` of the standard normal distribution lies below.
 *
 * Newton's method from 0, which closes in from one side because the distribution is concave above 0;
 * below a half by symmetry.
 *
 * @param p above 0 and below 1, from 1e-9 to 1 - 1e-9
 * @throws RangeError outside it
 * @source G. Marsaglia, Evaluating the Normal Distribution, Journal of Statistical Software 11(4), 2004
 * @example normalQuantile(0.95) -> 1.6448536270
 */
export function normalQuantile(p: number): number {
  if (!(p >= 1e-9 && p <= 1 - 1e-9)) throw new RangeError(`normalQuantile: ${p} is no such share`)
  if (p < 0.5) return -normalQuantile(1 - p)
  let z = 0
  let last = Number.POSITIVE_INFINITY
  // Steps shrink until they are the noise of the last digit, and then no longer.
  for (let step = (p - 0.5) / density(0); step > 0 && step < last; ) {
    z += step
    last = step
    step = (p - shareBelow(z)) / density(z)
  }
  return z
}
