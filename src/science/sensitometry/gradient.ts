import { andThen, failed, ok, problem, type Result } from '../../kernel/index.js'
import { brent } from '../fitting/index.js'
import { refusedOutside } from '../range.js'
import { short } from '../saying.js'
import type { StripCurve } from './curve.js'
import type { CharacteristicCurve, FigureMark, Measured } from './definition.js'
import { SENSITOMETRY_LIMITS } from './limits.js'
import { measured } from './measured.js'
import { densityAt, exposureAtNet } from './reach.js'

/** The two points of an average gradient: a net density, and where the second lies. */
export interface GradientPoints {
  readonly fromNet: number
  readonly to:
    | { readonly net: number }
    /** So far on log exposure. */
    | { readonly distance: number }
    /** So far along the straight line between the points. */
    | { readonly chord: number }
}

/** A published average gradient: its two points, and how well its definition is known. */
export interface GradientDefinition extends GradientPoints {
  readonly says: string
  readonly mark: FigureMark
}

/** Average gradients by name. Two films equal by one of them may differ by another: never compare across. */
export const GRADIENTS = {
  'iso-triangle': { fromNet: 0.1, to: { distance: 1.3 }, says: '0.10 and 1.30 further', mark: 'source' },
  'g-bar': { fromNet: 0.1, to: { distance: 1.5 }, says: '0.10 and 1.50 further', mark: 'source' },
  'g-bar-chord': { fromNet: 0.1, to: { chord: 1.5 }, says: '0.10 and 1.50 along the chord', mark: 'source' },
  'contrast-index-short': { fromNet: 0.1, to: { chord: 2 }, says: '0.10 and 2.00 along the chord', mark: 'source' },
  radiographic: { fromNet: 0.25, to: { net: 2 }, says: '0.25 and 2.00', mark: 'source' },
} as const satisfies Record<string, GradientDefinition>
/** A published average gradient by its name. */
export type GradientName = keyof typeof GRADIENTS

const LENGTHS = { low: 0.05, high: 6 } as const

/**
 * Average gradient of a curve between two stated points: the density gained over the log exposure between them.
 * Net densities 0.01 to 6, distances 0.05 to 6. Refused when the curve does not reach a point: then the measure
 * is not defined, and never zero.
 */
export const averageGradient = (curve: CharacteristicCurve, points: GradientPoints): Result<number> =>
  refusedPoints(points) ??
  andThen(exposureAtNet(curve, points.fromNet, 'This gradient'), (start) => {
    const end = endOf(curve, points, start)
    return end.ok ? ok((curve.at(end.value) - curve.at(start)) / (end.value - start)) : end
  })

function refusedPoints({ fromNet, to }: GradientPoints) {
  const first = refusedOutside('curve.bad-value', 'The lower net density', fromNet, { low: 0.01, high: 6 })
  if (first) return first
  if ('net' in to)
    return refusedOutside('curve.bad-value', 'The upper net density', to.net, { low: fromNet + 0.01, high: 6 })
  return refusedOutside('curve.bad-value', 'The distance', 'distance' in to ? to.distance : to.chord, LENGTHS)
}

function endOf(curve: CharacteristicCurve, { to }: GradientPoints, start: number): Result<number> {
  if ('net' in to) return exposureAtNet(curve, to.net, 'This gradient')
  const straight = (end: number): Result<number> => {
    const reached = densityAt(curve, end, 'This gradient')
    return reached.ok ? ok(end) : reached
  }
  if ('distance' in to) return straight(start + to.distance)
  // The chord's end lies nearer on log exposure than its length; it leaves the curve only if even the last step is too near.
  const length = (end: number): number => Math.hypot(end - start, curve.at(end) - curve.at(start)) - to.chord
  if (!(length(curve.to) >= 0)) return straight(start + to.chord)
  return ok(brent(length, start, curve.to, 1e-12))
}

/** An average gradient of a strip by one of the published definitions, with its interval. Refusals as above. */
export const namedGradient = (of: StripCurve, name: GradientName): Result<Measured> =>
  measured(of, (curve) => averageGradient(curve, GRADIENTS[name]))

/** The straight part is looked for over this much log exposure: three stops. An assumption, as books only say "the straight-line part". */
export const STRAIGHT_PART = 0.9

/**
 * Gamma: slope of the straight-line part, taken as the steepest mean slope over 0.90 of log exposure. With noisy
 * readings the steepest is chosen a little too steep, by less than one standard error.
 * Refused when the strip is shorter than that or does not rise. Definition: Hurter & Driffield 1890; Ives 1920.
 */
export function gammaOf(curve: CharacteristicCurve): Result<number> {
  const { from, to } = curve
  const shortest = densityAt(curve, from + STRAIGHT_PART, 'Gamma')
  if (!shortest.ok) return shortest
  const places = Math.max(1, Math.ceil((to - from - STRAIGHT_PART) / 0.02))
  let steepest = 0
  for (let i = 0; i <= places; i++) {
    const start = from + ((to - from - STRAIGHT_PART) * i) / places
    steepest = Math.max(steepest, (curve.at(start + STRAIGHT_PART) - curve.at(start)) / STRAIGHT_PART)
  }
  if (steepest >= SENSITOMETRY_LIMITS.contrast.low) return ok(steepest)
  return failed(problem('curve.no-straight-part', { from: short(from, 2), to: short(to, 2) }, 'steps'))
}

/** Gamma of a strip with its interval. */
export const gamma = (of: StripCurve): Result<Measured> => measured(of, gammaOf)
