const MOST_STEPS = 100

/**
 * The x between `low` and `high` where f changes sign, to within `tolerance`.
 * f must have different signs at the two ends (or be zero at one); otherwise it is a bug and throws.
 * Source: R. P. Brent, Algorithms for Minimization without Derivatives, 1973, ch. 4.
 */
export function brent(f: (x: number) => number, low: number, high: number, tolerance: number): number {
  let [a, b] = [low, high]
  let [fa, fb] = [f(a), f(b)]
  if (fa === 0) return a
  if (fb === 0) return b
  // By signs, not by the product: that vanishes for very small values.
  if (!(Math.sign(fa) * Math.sign(fb) < 0)) throw new RangeError(`No change of sign between ${low} and ${high}.`)
  let [c, fc] = [a, fa]
  let step = b - a
  let before = step
  for (let count = 0; count < MOST_STEPS; count++) {
    if (Math.abs(fc) < Math.abs(fb)) {
      ;[a, b, c] = [b, c, b]
      ;[fa, fb, fc] = [fb, fc, fb]
    }
    const enough = 2 * Number.EPSILON * Math.abs(b) + tolerance / 2
    const half = (c - b) / 2
    if (Math.abs(half) <= enough || fb === 0) return b
    const tried = interpolated(a, b, c, fa, fb, fc)
    if (Math.abs(before) >= enough && Math.abs(fa) > Math.abs(fb) && isUseful(tried, half, before, enough)) {
      before = step
      step = tried
    } else {
      step = half
      before = half
    }
    a = b
    fa = fb
    b += Math.abs(step) > enough ? step : Math.sign(half) * enough
    fb = f(b)
    if (Math.sign(fb) === Math.sign(fc)) {
      c = a
      fc = fa
      step = b - a
      before = step
    }
  }
  return b
}

/** Step towards the root by inverse quadratic interpolation, or by the secant when only two points differ. */
function interpolated(a: number, b: number, c: number, fa: number, fb: number, fc: number): number {
  if (a === c) return ((a - b) * fb) / (fb - fa)
  return ((a - b) * fb * fc) / ((fa - fb) * (fa - fc)) + ((c - b) * fa * fb) / ((fc - fa) * (fc - fb))
}

/** Brent's rule: the step stays inside three quarters of the way and shrinks by half every second time. */
const isUseful = (tried: number, half: number, before: number, enough: number): boolean =>
  tried * half > 0 && Math.abs(tried) < 1.5 * Math.abs(half) - enough / 2 && Math.abs(tried) < Math.abs(before) / 2
