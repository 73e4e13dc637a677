import { celsius, seconds } from '../../kernel/index.js'
import type { Origin } from './definition.js'

const by = <const T extends object>(origin: Origin, values: T): T & { readonly origin: Origin } => ({
  ...values,
  origin,
})

/**
 * Every limit that this folder judges by, as data with its origin; forms and tests read them from here.
 * `practice` is common practice without a measured source, `assumption` is ours.
 */
export const LIMITS = {
  /** Black-and-white developers outside this: said, not refused. The span of the A1 regulation table agrees. */
  practice: by('practice', { from: celsius(16), to: celsius(27) }),
  /** Shorter than this develops unevenly: said, not refused. */
  shortestTime: by('practice', { time: seconds(300) }),
  /**
   * Usable range when the record states none; widened to hold its points. Ives 1920 gives 4–32 °C for two
   * developers; the lower end here is our own caution.
   */
  usable: by('assumption', { from: celsius(10), to: celsius(32) }),
  /** What a developing bath can be at all. */
  temperature: by('assumption', { from: celsius(0), to: celsius(45) }),
  /** What a printed developing time can be at all. */
  pointTime: by('assumption', { from: seconds(5), to: seconds(21_600) }),
  /** What an answer can be at all; beyond it the question makes no sense by hand. */
  answerTime: by('assumption', { from: seconds(1), to: seconds(86_400) }),
  points: by('assumption', { most: 24 }),
  /** Two points closer than this are at one temperature (0.01 °F is 0.0056 °C). */
  sameTemperature: by('assumption', { within: 0.005 }),
  /** A ten-degree coefficient lies above `above` and not over `to`; published ones run from 1.25 to 4. */
  coefficient: by('assumption', { above: 1, to: 6 }),
  /** Half of the last printed digit of a coefficient. */
  coefficientRounding: by('assumption', { half: 0.05 }),
  /** Each named factor on the time. */
  factor: by('assumption', { from: 0.3, to: 4 }),
  /** Give or take of a thermometer that nobody has checked, °C, and the most that may be asked about. */
  thermometerError: by('assumption', { usual: 0.5, most: 5 }),
  /** A single bath with one sheet point holds its time this near to it, °C. */
  singleBathTolerance: by('assumption', { within: 0.3 }),
  /** Window of a fixed time when none is stated: this far either side of its temperature, °C. */
  fixedWindow: by('practice', { within: 0.15 }),
  /** No sheet is taken to be rounded more coarsely than this. */
  roundingStep: by('assumption', { most: seconds(30) }),
} as const

/** Slack for comparisons of degrees and seconds that went through °F or a product of factors. */
const SLACK = 1e-6
export const isUnder = (value: number, limit: number): boolean => value < limit - SLACK
export const isOver = (value: number, limit: number): boolean => value > limit + SLACK
export const isOutside = (value: number, range: { readonly from: number; readonly to: number }): boolean =>
  isUnder(value, range.from) || isOver(value, range.to)
/** One temperature, give or take the rounding of arithmetic. */
export const isAt = (value: number, other: number): boolean => Math.abs(value - other) <= SLACK
