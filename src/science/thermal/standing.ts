import { type Celsius, celsius, failed, ok, problem, type Result, type Seconds, seconds } from '../../kernel/index.js'
import { refusedOutside } from '../range.js'
import { sayTemperature } from '../saying.js'
import { surroundingsOutside, temperatureOutside, timeOutside } from './checked.js'
import { LIQUID_WATER, THERMAL_LIMITS } from './definition.js'

/** Something warm or cold that stands in surroundings which keep their temperature. */
export interface Standing {
  readonly from: Celsius
  readonly around: Celsius
  /** Time constant τ: after it 37 % of the difference is left. */
  readonly constant: Seconds
}

/** Averages and corrections are over a second or more. */
const COURSE = { low: 1, high: THERMAL_LIMITS.time.high }

/** Where a temperature is that has drawn toward its surroundings for a while; seconds. Newton's law of cooling. */
export const drawnToward = (around: number, from: number, constant: number, after: number): number =>
  around + (from - around) * Math.exp(-after / constant)

/**
 * Where it is after a time of 0–7 days: T = Ta + (T0 − Ta) exp(−t/τ). A bath of 24 °C in a room of 18 °C with a time
 * constant of two hours is at 23.3 °C after a quarter of an hour. Refused outside {@link THERMAL_LIMITS}.
 */
export function standsAt(standing: Standing, after: Seconds): Result<Celsius> {
  const refused = standingOutside(standing) ?? timeOutside(after, THERMAL_LIMITS.time)
  if (refused) return refused
  return ok(celsius(drawnToward(standing.around, standing.from, standing.constant, after)))
}

/** When it comes to a temperature: τ ln((T0 − Ta)/(T − Ta)). Refused when it never does, or not within a week. */
export function reachesAt(standing: Standing, wanted: Celsius): Result<Seconds> {
  const refused =
    standingOutside(standing) ?? temperatureOutside('the wanted temperature', wanted, LIQUID_WATER, 'wanted')
  if (refused) return refused
  const { from, around, constant } = standing
  const [whole, left] = [from - around, wanted - around]
  const time = whole === left ? 0 : constant * Math.log(whole / left)
  if (time >= 0 && time <= THERMAL_LIMITS.time.high) return ok(seconds(time))
  const details = { wanted: sayTemperature(wanted), from: sayTemperature(from), around: sayTemperature(around) }
  return failed(problem('thermal.never-there', details, 'wanted'))
}

/** The mean over a time of 0:01 to 7 days from now: Ta + (T0 − Ta)(1 − exp(−u))/u with u = t/τ. */
export function meanOver(standing: Standing, time: Seconds): Result<Celsius> {
  const refused = standingOutside(standing) ?? timeOutside(time, COURSE)
  if (refused) return refused
  const { from, around, constant } = standing
  return ok(celsius(around + (from - around) * meanShare(time / constant)))
}

/** What is left of a difference on average over u time constants. */
const meanShare = (u: number): number => -Math.expm1(-u) / u

/**
 * What to start from so that the mean over a time is the wanted temperature; the inverse of {@link meanOver}. Refused
 * when that start is no water between 0 and 99.9 °C. The mean temperature is not the mean rate: sum the development for
 * a drift of more than two or three degrees.
 */
export function startForMean(wanted: Celsius, around: Celsius, constant: Seconds, time: Seconds): Result<Celsius> {
  const refused = standingOutside({ from: wanted, around, constant }, 'wanted') ?? timeOutside(time, COURSE)
  if (refused) return refused
  const from = around + (wanted - around) / meanShare(time / constant)
  return temperatureOutside('the start', from, LIQUID_WATER, 'wanted') ?? ok(celsius(from))
}

/** By how much a bath may move before it is read again, °C: common practice. */
export const READ_AGAIN = 0.5
const MOVED = { low: 0.05, high: 20 }

/**
 * When it will have moved so far (0.05–20 °C) that it should be read again; null when it never moves so far, and never
 * more than a week.
 */
export function readAgainAfter(standing: Standing, moved: number = READ_AGAIN): Result<Seconds | null> {
  const refused =
    standingOutside(standing) ?? refusedOutside('thermal.bad-value', 'A change in °C', moved, MOVED, 'moved')
  if (refused) return refused
  const whole = Math.abs(standing.from - standing.around)
  if (whole <= moved) return ok(null)
  return ok(seconds(Math.min(THERMAL_LIMITS.time.high, -standing.constant * Math.log1p(-moved / whole))))
}

const standingOutside = ({ from, around, constant }: Standing, field = 'from') =>
  temperatureOutside('the temperature it starts from', from, LIQUID_WATER, field) ??
  surroundingsOutside(around) ??
  constantOutside(constant)

export const constantOutside = (constant: number) =>
  refusedOutside('thermal.bad-value', 'A time constant in seconds', constant, THERMAL_LIMITS.constant, 'constant')
