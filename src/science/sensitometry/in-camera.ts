import { failed, ok, problem, type Result } from '../../kernel/index.js'
import { linearLeastSquares, monotoneSmoother } from '../fitting/index.js'
import { refusedOutside } from '../range.js'
import { short } from '../saying.js'
import { SENSITOMETRY_LIMITS, SPEED_CRITERION } from './limits.js'
import { NORMAL_95 } from './measured.js'
import { type NamedSpeed, nameSpeed } from './speed-names.js'

const APERTURES = { low: 0.5, high: 512 } as const
const TIMES = { low: 1e-5, high: 3600 } as const

/** A camera setting: f-number as marked, seconds. */
export interface Setting {
  readonly aperture: number
  readonly time: number
}

/**
 * Stops that an f-number (0.5 to 512) as marked stands for, f/1 being 0. Marks are rounded: f/11 is 7 stops, not
 * 6.92. `fraction` says in what steps the lens is marked. Outside, refused.
 */
export const stopsOfAperture = (marked: number, fraction: 1 | 2 | 3 = 2): Result<number> =>
  refusedOutside('speed.bad-value', 'An f-number', marked, APERTURES, 'aperture') ??
  ok(Math.round(2 * Math.log2(marked) * fraction) / fraction + 0)

/**
 * The index that a frame of a grey card stands for, when `normal` is the meter's setting at `index` and every
 * frame was meant to lie the same number of stops under it: a stop more light than meant is half the index.
 * Index 0.5 to 51200, f-numbers 0.5 to 512, times 0.00001 to 3600 s; outside, refused.
 *
 * `stopsUnder`: how many stops under the meter the frames were meant to lie (zone I is four).
 */
export function indexOfFrame(
  index: number,
  normal: Setting,
  frame: Setting,
  options: { readonly stopsUnder?: number; readonly fraction?: 1 | 2 | 3 } = {},
): Result<number> {
  const { stopsUnder = 0, fraction = 2 } = options
  const [meant, taken] = [stopsOfAperture(normal.aperture, fraction), stopsOfAperture(frame.aperture, fraction)]
  const refused =
    refusedOutside('speed.bad-value', 'An exposure index', index, { low: 0.5, high: 51_200 }, 'index') ??
    refusedOutside('speed.bad-value', 'A time', normal.time, TIMES, 'normal.time') ??
    refusedOutside('speed.bad-value', 'A time', frame.time, TIMES, 'frame.time') ??
    refusedOutside('speed.bad-value', 'The stops under the meter', stopsUnder, { low: -10, high: 10 }, 'stopsUnder')
  if (refused) return refused
  if (!meant.ok) return meant
  if (!taken.ok) return taken
  const less = taken.value - meant.value - stopsUnder - Math.log2(frame.time / normal.time)
  return ok(index * 2 ** less)
}

/** A frame by the index it stands for, and its density over base and fog. */
export interface IndexFrame {
  readonly index: number
  readonly netDensity: number
}

/** One's own index: relative to the one the meter was set to, and only for this camera, meter and development. */
export interface OwnIndex {
  readonly index: number
  readonly low: number
  readonly high: number
  readonly named: NamedSpeed
}

/**
 * One's own index from frames exposed for several indexes: the one at which the density is 0.10 over base and fog,
 * on a smooth monotone curve of the frames, with a 95 % interval by a reading error (default 0.01).
 * Two to 36 frames with different indexes; when none or all meet 0.10 it says whether more or less light is needed.
 */
export function ownIndex(
  frames: readonly IndexFrame[],
  readingError: number = SENSITOMETRY_LIMITS.readingError,
): Result<OwnIndex> {
  const { readingErrors } = SENSITOMETRY_LIMITS
  const refused =
    refusedOutside('speed.bad-value', 'The number of frames', frames.length, { low: 2, high: 36 }, 'frames') ??
    refusedOutside('speed.bad-value', 'A reading error', readingError, readingErrors, 'readingError') ??
    badFrame(frames)
  if (refused) return refused
  // From the least light: the highest index first.
  const sorted = [...frames].sort((one, other) => other.index - one.index)
  const light = sorted.map(({ index }) => -Math.log10(index))
  if (light.some((x, i) => i > 0 && x - (light[i - 1] as number) < 0.01))
    return failed(problem('speed.bad-value', { what: 'The same index twice', value: 'a frame', low: 1, high: 1 }))
  const densities = sorted.map(({ netDensity }) => netDensity)
  const smoother = monotoneSmoother(
    light,
    light.map(() => readingError),
    SENSITOMETRY_LIMITS.bend,
  )
  const found = crossing(smoother.through(densities).at, light)
  if (found === null) return notMet(densities)
  const slope = linearLeastSquares(...around(light, densities, found)).slope
  const error = slope > 0 ? readingError / slope : Number.POSITIVE_INFINITY
  const half = Math.min(1, NORMAL_95 * error)
  const named = nameSpeed(10 ** -found)
  if (!named.ok) return named
  return ok({ index: 10 ** -found, low: 10 ** (-found - half), high: 10 ** (-found + half), named: named.value })
}

function badFrame(frames: readonly IndexFrame[]) {
  for (const [i, { index, netDensity }] of frames.entries()) {
    const refused =
      refusedOutside('speed.bad-value', 'An exposure index', index, { low: 0.5, high: 51_200 }, `frames[${i}]`) ??
      refusedOutside('speed.bad-value', 'A net density', netDensity, { low: -0.1, high: 6 }, `frames[${i}]`)
    if (refused) return refused
  }
  return null
}

/** Where the curve passes the speed point's density, by bisection; null when it does not. */
function crossing(at: (x: number) => number, xs: readonly number[]): number | null {
  const wanted = SPEED_CRITERION.speedPoint
  let [low, high] = [xs[0] as number, xs.at(-1) as number]
  if (at(low) > wanted || at(high) < wanted) return null
  for (let i = 0; i < 48; i++) {
    const middle = (low + high) / 2
    if (at(middle) < wanted) low = middle
    else high = middle
  }
  return high
}

/** The readings within a stop of a place, at least the nearest two. */
function around(xs: readonly number[], ys: readonly number[], place: number): [number[], number[]] {
  const pairs = xs.map((x, i) => ({ x, y: ys[i] as number, away: Math.abs(x - place) }))
  pairs.sort((one, other) => one.away - other.away)
  const near = pairs.filter(({ away }, i) => i < 2 || away <= 0.31)
  return [near.map(({ x }) => x), near.map(({ y }) => y)]
}

function notMet(densities: readonly number[]): Result<never> {
  const [lowest, highest] = [Math.min(...densities), Math.max(...densities)]
  const remedy = highest < SPEED_CRITERION.speedPoint ? 'more' : 'less'
  const details = { wanted: SPEED_CRITERION.speedPoint, lowest: short(lowest, 3), highest: short(highest, 3), remedy }
  return failed(problem('speed.not-met', details, 'frames'))
}
