import { andThen, failed, ok, problem, type Result } from '../../kernel/index.js'
import { brent } from '../fitting/index.js'
import { short } from '../saying.js'
import { firstReaching, type StripCurve } from './curve.js'
import type { CharacteristicCurve, Measured } from './definition.js'
import { measured } from './measured.js'

/** Radii of the two arcs; remembered (Niederpruem, Nelson & Yule 1966), two log units apart by a seen source. */
export const CONTRAST_INDEX_ARCS = { low: 0.2, high: 2.2 } as const

/** A point of a characteristic curve: log10 of the exposure, and the density there. */
export interface CurvePoint {
  readonly logExposure: number
  readonly density: number
}

/** The gauge as it lies: its centre on the base-and-fog line and where the arcs cut the curve. */
export interface ContrastIndex {
  readonly index: number
  readonly centre: number
  readonly low: CurvePoint
  readonly high: CurvePoint
}

/**
 * Contrast index: the slope of the line from a centre on the base-and-fog line through the two points where arcs
 * of 0.2 and 2.2 about it cut the curve, the centre slid until both lie on one line. Used to aim development.
 * Refused when the curve ends before the far arc. About 150 looks at the curve.
 */
export function contrastIndexOf(curve: CharacteristicCurve): Result<ContrastIndex> {
  const { low: near, high: far } = CONTRAST_INDEX_ARCS
  const net = netOf(curve)
  const cut = (centre: number, radius: number): number =>
    brent((angle) => net(centre + radius * Math.cos(angle)) - radius * Math.sin(angle), 0, Math.PI / 2, 1e-12)
  const span = centres(curve, net)
  if (!span.ok) return span
  const apart = (centre: number): number => cut(centre, near) - cut(centre, far)
  const { first, last } = span.value
  if (!(apart(first) <= 0 && apart(last) >= 0)) return notReached(curve)
  const centre = brent(apart, first, last, 1e-11)
  const angle = cut(centre, far)
  const low = { logExposure: centre + near * Math.cos(angle), density: curve.baseFog + near * Math.sin(angle) }
  const high = { logExposure: centre + far * Math.cos(angle), density: curve.baseFog + far * Math.sin(angle) }
  return high.logExposure > curve.to + 1e-9 || low.logExposure < curve.from - 1e-9
    ? notReached(curve)
    : ok({ index: Math.tan(angle), centre, low, high })
}

/** Density over base and fog; level before the first step, on with its end tangent past the last, never under 0. */
const netOf =
  (curve: CharacteristicCurve) =>
  (logExposure: number): number =>
    Math.max(0, curve.at(Math.max(curve.from, logExposure)) - curve.baseFog)

/** Centres from where the near arc lies flat on the base to where the curve itself is as high as its radius. */
function centres(curve: CharacteristicCurve, net: (logExposure: number) => number) {
  const { low: near } = CONTRAST_INDEX_ARCS
  if (net(curve.from) >= near) {
    const details = {
      what: 'A contrast index',
      wanted: short(curve.baseFog, 3),
      reached: short(curve.at(curve.from), 3),
    }
    return failed(problem('curve.starts-too-dense', details, 'steps'))
  }
  const last = firstReaching(curve, curve.baseFog + near)
  return last === null ? notReached(curve) : ok({ first: curve.from - near, last: last - 1e-9 })
}

const notReached = (curve: CharacteristicCurve) =>
  failed(
    problem(
      'curve.beyond-exposure',
      { what: 'A contrast index', wanted: short(curve.to + 0.3, 2), reached: short(curve.to, 2) },
      'steps',
    ),
  )

/** Contrast index of a strip by arcs, with its interval. */
export const contrastIndex = (of: StripCurve): Result<Measured> =>
  measured(of, (curve) => andThen(contrastIndexOf(curve), ({ index }) => ok(index)))
