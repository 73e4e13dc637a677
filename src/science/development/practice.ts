import { failed, ok, problem, type Result } from '../../kernel/index.js'
import { short } from '../saying.js'
import type { Modifier } from './definition.js'

/** A factor of common practice with the range that is practised: one's own, measured, is always better. */
export interface PracticeFactor {
  readonly modifier: Modifier
  readonly low: number
  readonly high: number
}

const practised = (name: Modifier['name'], low: number, high: number, factor = (low + high) / 2): PracticeFactor => ({
  modifier: { name, factor, origin: 'practice' },
  low,
  high,
})

/**
 * Factors on the time as they are practised, as data. Pushes: a college hand-out quoting Horenstein, Black and White
 * Photography, p. 154. Agitation, repeat use and pull have no source beyond practice. A sheet that states its own
 * factor, or one's own strips, stand above all of these; pre-wetting has no practised factor at all.
 */
export const PRACTICE_FACTORS = {
  /** Against turning a few times a minute. */
  agitation: {
    intermittent: practised('agitation', 1, 1),
    continuous: practised('agitation', 0.8, 0.9),
    rotary: practised('agitation', 0.8, 0.9),
  },
  /** By stops of index: below nothing is a pull. */
  pushPull: {
    '-1': practised('push-pull', 0.7, 0.85),
    '1': practised('push-pull', 1.35, 1.5),
    '2': practised('push-pull', 1.75, 2),
  },
  /** For each film before this one in a litre of stock. */
  eachUse: { low: 0.1, high: 0.15, mostUses: 8 },
} as const

/** A way of turning that practice has a factor for. */
export type Agitation = keyof typeof PRACTICE_FACTORS.agitation

/** The practised factor of a way of agitating, when the sheet's time is for turning a few times a minute. */
export const agitationFactor = (way: Agitation): PracticeFactor => PRACTICE_FACTORS.agitation[way]

/** What an index asks, and what the time at hand is for. */
export interface Indexes {
  /** The index that the sheet's time is for, 0.5 to 51200. */
  readonly ofTime: number
  /** The index that the film was exposed at, 0.5 to 51200. */
  readonly exposedAt: number
}

/** Third-stop names are no exact powers of two: so near to a whole stop counts as one. */
const NEARLY_WHOLE = 0.12

/** Whether a time is the sheet's own for the index that the film was exposed at. */
export const isOwnIndex = ({ ofTime, exposedAt }: Indexes): boolean =>
  Math.abs(Math.log2(exposedAt / ofTime)) < NEARLY_WHOLE

/**
 * The practised push or pull from the index that a time is for to the one that the film was exposed at: one or two
 * stops up, one down, each with its range. Anything else is refused: nothing is practised there. When both are the
 * same the time is the sheet's own for that index, and a factor on top is refused (push by sheet or by factor, never both).
 */
export function pushFactor({ ofTime, exposedAt }: Indexes): Result<PracticeFactor> {
  const possible = ofTime >= 0.5 && ofTime <= 51_200 && exposedAt >= 0.5 && exposedAt <= 51_200
  const stops = possible ? Math.log2(exposedAt / ofTime) : Number.NaN
  const whole = Math.round(stops)
  if (isOwnIndex({ ofTime, exposedAt })) return failed(problem('times.push-twice', { index: ofTime }))
  const name = String(whole) as keyof typeof PRACTICE_FACTORS.pushPull
  const found = Math.abs(stops - whole) <= NEARLY_WHOLE ? PRACTICE_FACTORS.pushPull[name] : undefined
  return found === undefined
    ? failed(problem('times.no-practised-push', { from: ofTime, to: exposedAt, stops: short(stops, 2) }, 'exposedAt'))
    : ok(found)
}

/**
 * The practised factor for using a bath again: 10 to 15 in a hundred for each film before this one in a litre of
 * stock. `use` counts this one: 1 is fresh. 1 to 8 whole uses, else refused.
 */
export function repeatUseFactor(use: number): Result<PracticeFactor> {
  const { low, high, mostUses } = PRACTICE_FACTORS.eachUse
  if (!(Number.isInteger(use) && use >= 1 && use <= mostUses))
    return failed(problem('times.bad-use', { use: short(use, 2), most: mostUses }, 'use'))
  return ok(practised('repeat-use', 1 + low * (use - 1), 1 + high * (use - 1)))
}
