/**
 * Makes step strips whose truth is known, from definitions alone: nothing here comes from the code that reads them.
 *
 * Truth: D(x) = base + g · w · ln(1 + exp((x − x0) / w)) with w = 0.15. From strip to strip the net densities are
 * multiplied by a factor whose deviation is 0.02 of average gradient; each reading is off by a normal error of 0.01.
 */
export interface Truth {
  readonly gamma: number
  readonly base: number
}

export interface SimulatedStrip {
  readonly steps: { readonly logExposure: number; readonly density: number }[]
  readonly baseFog: { readonly density: number; readonly readings: number }
}

const WIDTH = 0.15
const MIDDLE = -2.184701
export const FAMILY: readonly Truth[] = [
  { gamma: 0.648506, base: 0.22 },
  { gamma: 0.8, base: 0.22 },
  { gamma: 0.5, base: 0.22 },
]
export const READING_ERROR = 0.01
export const STRIP_SCATTER = 0.02

export const trueNet = ({ gamma }: Truth, x: number): number =>
  gamma * WIDTH * Math.log1p(Math.exp((x - MIDDLE) / WIDTH))

/** Log exposure of a net density, solved by hand from the truth's formula. */
export const trueExposure = ({ gamma }: Truth, net: number): number =>
  MIDDLE + WIDTH * Math.log(Math.expm1(net / (gamma * WIDTH)))

export function trueGradient(truth: Truth, distance = 1.5): number {
  const m = trueExposure(truth, 0.1)
  return (trueNet(truth, m + distance) - 0.1) / distance
}

/** 0.8 / Hm, or with the Δ-X polynomial when the truth is off the triangle. */
export function trueSpeed(truth: Truth): number {
  const m = trueExposure(truth, 0.1)
  const rise = trueNet(truth, m + 1.3) - 0.1
  const shift = Math.abs(rise - 0.8) <= 0.05 ? 0 : 0.83 - 0.86 * rise + 0.24 * rise ** 2 - 0.2956
  return (0.8 / 10 ** m) * 10 ** shift
}

/** Uniform numbers by mulberry32, the same for a seed every time. */
export function chance(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = Math.imul(state ^ (state >>> 15), state | 1)
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61)
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32
  }
}

/** A normal deviate by Box and Muller. */
export const normal = (random: () => number): number =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random())

export function simulateStrip(truth: Truth, random: () => number, readings = 4): SimulatedStrip {
  const factor = 1 + (STRIP_SCATTER * normal(random)) / trueGradient(truth)
  const steps = Array.from({ length: 21 }, (_, i) => {
    const logExposure = -3 + 0.15 * i
    const density = truth.base + factor * trueNet(truth, logExposure) + READING_ERROR * normal(random)
    return { logExposure, density }
  })
  const clear = truth.base + (READING_ERROR / Math.sqrt(readings)) * normal(random)
  return { steps, baseFog: { density: clear, readings } }
}
