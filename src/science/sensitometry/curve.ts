import { andThen, ok, type Result } from '../../kernel/index.js'
import { type MonotoneSmoother, monotoneSmoother } from '../fitting/index.js'
import type { CharacteristicCurve, Strip, StripInput } from './definition.js'
import { SENSITOMETRY_LIMITS } from './limits.js'
import { defineStrip } from './strip.js'

/** What is said of a strip whose curve stands all the same. */
export type CurveWarning =
  /** No clear film was read: the lightest step stands for base and fog, and it may have had light. */
  | { readonly code: 'base-from-lightest-step'; readonly density: number }
  /** Steps too far apart to show a toe: a speed's interval is then a little too narrow (92 in a hundred at 0.30). */
  | { readonly code: 'steps-far-apart'; readonly apart: number }
  /** Readings that fell were evened out: steps by number. */
  | { readonly code: 'dip-evened-out'; readonly steps: readonly number[] }

/** Two curves either side of the strip's own: one reading (or the strip's contrast) half an error up and down. */
export interface Neighbours {
  readonly above: CharacteristicCurve
  readonly below: CharacteristicCurve
}

/** The curve of one strip, with what intervals need. Only `characteristicCurve` makes one. */
export interface StripCurve {
  readonly strip: Strip
  readonly curve: CharacteristicCurve
  readonly warnings: readonly CurveWarning[]
  /** One pair for each reading, base and fog last. */
  readonly byReadings: () => readonly Neighbours[]
  /** The strip's contrast one half of its scatter up and down. */
  readonly byStrips: () => Neighbours
}

/**
 * The characteristic curve of a strip: density against log exposure, smooth, never falling, following the
 * readings as closely as their error asks. Every other measure is read off it.
 *
 * Inputs as `defineStrip`; what it refuses is refused here. Costs about steps³ operations (0.2 ms for 21 steps);
 * the neighbours, made when first asked for, about twenty times that.
 * Definition: Hurter & Driffield 1890 for the curve; the smoothing is ours, see `monotoneSmoother`.
 */
export const characteristicCurve = (input: StripInput): Result<StripCurve> =>
  andThen(defineStrip(input), (strip) => ok(curveOf(strip)))

function curveOf(strip: Strip): StripCurve {
  const { steps, readingError } = strip
  const densities = steps.map(({ density }) => density)
  const smoother = monotoneSmoother(
    steps.map(({ logExposure }) => logExposure),
    steps.map(() => readingError),
    SENSITOMETRY_LIMITS.bend,
  )
  const base = strip.baseFog?.density ?? null
  const drawn = (ys: readonly number[], clear: number | null) => through(smoother, strip, ys, clear)
  const curve = drawn(densities, base)
  return {
    strip,
    curve,
    warnings: warningsOf(strip, curve),
    byReadings: once(() => {
      const half = readingError / 2
      const pairs = densities.map((density, i) => ({
        above: drawn(densities.with(i, density + half), base),
        below: drawn(densities.with(i, density - half), base),
      }))
      if (strip.baseFog === null) return pairs
      const halfBase = half / Math.sqrt(strip.baseFog.readings)
      const { density } = strip.baseFog
      return [...pairs, { above: drawn(densities, density + halfBase), below: drawn(densities, density - halfBase) }]
    }),
    byStrips: once(() => {
      const part = strip.stripScatter / overallGradient(curve) / 2
      const scaled = (factor: number) =>
        drawn(
          densities.map((density) => curve.baseFog + factor * (density - curve.baseFog)),
          base,
        )
      return { above: scaled(1 + part), below: scaled(1 - part) }
    }),
  }
}

function through(smoother: MonotoneSmoother, { steps }: Strip, ys: readonly number[], base: number | null) {
  const { at, slopeAt } = smoother.through(ys)
  const from = (steps[0] as { logExposure: number }).logExposure
  const to = (steps.at(-1) as { logExposure: number }).logExposure
  return { at, slopeAt, baseFog: base ?? at(from), from, to }
}

/** Mean slope over base and fog to the densest step: what a strip's scatter is a part of. At least 0.05. */
function overallGradient(curve: CharacteristicCurve): number {
  const { from, to, baseFog } = curve
  const low = firstReaching(curve, baseFog + 0.1) ?? from
  const high = Math.min(to, low + 1.3)
  return high > low ? Math.max(0.05, (curve.at(high) - curve.at(low)) / (high - low)) : 0.05
}

/**
 * The least log exposure between the first and last step at which the curve has this density; null when it
 * starts above it or never reaches it.
 */
export function firstReaching(curve: CharacteristicCurve, density: number): number | null {
  const { from, to } = curve
  if (curve.at(from) > density || curve.at(to) < density) return null
  let [low, high] = [from, to]
  // Bisection: the curve may be level for a while, which finer methods do not like. Ends at the last digits.
  for (let i = 0; i < 48 && high - low > 1e-12; i++) {
    const middle = (low + high) / 2
    if (curve.at(middle) < density) low = middle
    else high = middle
  }
  return high
}

function warningsOf({ baseFog, steps }: Strip, curve: CharacteristicCurve): CurveWarning[] {
  const dips = steps.flatMap(({ density }, i) => (i > 0 && density < (steps[i - 1]?.density ?? 0) ? [i + 1] : []))
  const apart = Math.max(...steps.slice(1).map(({ logExposure }, i) => logExposure - (steps[i]?.logExposure ?? 0)))
  return [
    ...(apart > SENSITOMETRY_LIMITS.wideStep ? [{ code: 'steps-far-apart', apart } as const] : []),
    ...(baseFog === null ? [{ code: 'base-from-lightest-step', density: curve.baseFog } as const] : []),
    ...(dips.length > 0 ? [{ code: 'dip-evened-out', steps: dips } as const] : []),
  ]
}

function once<T>(make: () => T): () => T {
  let made: { value: T } | undefined
  return () => {
    made ??= { value: make() }
    return made.value
  }
}
