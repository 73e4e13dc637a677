import {
  type Celsius,
  failed,
  type Millilitres,
  ok,
  problem,
  type Result,
  type Seconds,
  seconds,
} from '../../kernel/index.js'
import { studentT95 } from '../fitting/index.js'
import { refusedOutside } from '../range.js'
import { sayTemperature } from '../saying.js'
import { surroundingsOutside, temperatureOutside, timeOutside, volumeOutside } from './checked.js'
import {
  LIQUID_WATER,
  type Surroundings,
  THERMAL_LIMITS,
  type TimeConstant,
  type VesselMaterial,
} from './definition.js'
import { HEAT_OF_WATER } from './heat.js'
import { constantOutside } from './standing.js'

/**
 * Heat that passes through a standing vessel's surface, W/(m² K): assumptions of ours. Bare metal gives off little by
 * radiation; in water the wall itself is what holds back.
 */
export const HEAT_PASSED: Readonly<Record<VesselMaterial, Readonly<Record<Surroundings, number>>>> = {
  steel: { air: 6, water: 300 },
  plastic: { air: 6, water: 60 },
  glass: { air: 8, water: 120 },
}

/** A guess is no better than this factor either way: assumption. */
export const GUESS_SPREAD = 2
const GUESSED = { low: 50, high: 20_000 }

/**
 * A first guess at a time constant from volume (50 mL – 20 L) and material: a full cylinder as high as wide that passes
 * heat by its whole surface, τ = m c / (h A). Half a litre in steel in still air: some 2¾ hours, good to a factor of two.
 * An assumption until readings replace it ({@link constantFrom}).
 */
export function guessConstant(
  volume: Millilitres,
  material: VesselMaterial,
  surroundings: Surroundings,
): Result<TimeConstant> {
  const refused = volumeOutside(volume, GUESSED)
  if (refused) return refused
  const width = Math.cbrt((4 * volume * 1e-6) / Math.PI)
  const surface = 1.5 * Math.PI * width * width
  const constant = (volume * HEAT_OF_WATER.value) / (HEAT_PASSED[material][surroundings] * surface)
  return ok({
    value: seconds(constant),
    low: seconds(constant / GUESS_SPREAD),
    high: seconds(constant * GUESS_SPREAD),
    origin: 'assumption',
    source: 'a full cylinder of this volume, by the heat that its wall passes',
  })
}

/** A reading of something that stands, seconds from any beginning. */
export interface StandingReading {
  readonly at: Seconds
  readonly temperature: Celsius
}

/** Give or take of a reading (95 %) when none is stated, °C: assumption. Only what differs between readings counts. */
export const READING_ERROR = 0.2

/**
 * A time constant from 2–200 readings in surroundings that keep their temperature, with its 95 % interval: weighted
 * least squares of ln|T − Ta| on time. Readings near the surroundings weigh less, since the same error of reading is
 * more of what is left. The interval is by the error of reading or by the readings' own scatter, whichever is wider, so
 * two readings have one too. Its upper end is null when the readings could also stand still.
 *
 * Refused: readings at the temperature of the surroundings or on both sides of it, all at one moment, or not drawing
 * nearer.
 */
export function constantFrom(
  readings: readonly StandingReading[],
  around: Celsius,
  readingError: number = READING_ERROR,
): Result<TimeConstant> {
  const refused = readingsOutside(readings) ?? surroundingsOutside(around) ?? errorOutside(readingError)
  if (refused) return refused
  const off = readings.map(({ temperature }) => temperature - around)
  const line = oneSided(off) ? weightedLine(readings, off, readingError) : null
  if (line === null || !(line.slope < 0))
    return failed(problem('thermal.does-not-approach', { around: sayTemperature(around) }, 'readings'))
  const value = -1 / line.slope
  return constantOutside(value) ?? ok({ value: seconds(value), ...ends(line), origin: 'measured', source: 'readings' })
}

function readingsOutside(readings: readonly StandingReading[]) {
  const count = refusedOutside(
    'thermal.bad-value',
    'The number of readings',
    readings.length,
    THERMAL_LIMITS.readings,
    'readings',
  )
  if (count) return count
  for (const [i, { at, temperature }] of readings.entries()) {
    const wrong =
      timeOutside(at, THERMAL_LIMITS.time, `readings[${i}].at`) ??
      temperatureOutside('a reading', temperature, LIQUID_WATER, `readings[${i}].temperature`)
    if (wrong) return wrong
  }
  return null
}

const errorOutside = (error: number) =>
  refusedOutside('thermal.bad-value', 'The error of reading in °C', error, THERMAL_LIMITS.readingError, 'error')

const oneSided = (off: readonly number[]): boolean => off.every((one) => one > 0) || off.every((one) => one < 0)

interface SlopeOfLog {
  readonly slope: number
  /** Half of its 95 % interval. */
  readonly half: number
}

/** Slope of ln|off| on time, each point by how well its logarithm is known; null when all stand at one moment. */
function weightedLine(readings: readonly StandingReading[], off: readonly number[], error: number): SlopeOfLog | null {
  const points = readings.map(({ at }, i) => {
    const left = Math.abs(off[i] as number)
    return { at, log: Math.log(left), weight: (left / (error / NORMAL_95)) ** 2 }
  })
  const sum = (of: (point: (typeof points)[number]) => number) => points.reduce((total, one) => total + of(one), 0)
  const weight = sum((one) => one.weight)
  const middle = sum((one) => one.weight * one.at) / weight
  const height = sum((one) => one.weight * one.log) / weight
  const spread = sum((one) => one.weight * (one.at - middle) ** 2)
  if (!(spread > 0)) return null
  const slope = sum((one) => one.weight * (one.at - middle) * (one.log - height)) / spread
  const misfit = sum((one) => one.weight * (one.log - height - slope * (one.at - middle)) ** 2)
  const over = points.length - 2
  const byReading = NORMAL_95 / Math.sqrt(spread)
  const byScatter = over === 0 ? 0 : studentT95(over) * Math.sqrt(misfit / over / spread)
  return { slope, half: Math.max(byReading, byScatter) }
}

const NORMAL_95 = 1.959964

/** An upper end past a month says no more than that none is known. */
function ends({ slope, half }: SlopeOfLog): Pick<TimeConstant, 'low' | 'high'> {
  const longest = slope + half < 0 ? -1 / (slope + half) : Number.POSITIVE_INFINITY
  return {
    low: seconds(-1 / (slope - half)),
    high: longest <= THERMAL_LIMITS.constant.high ? seconds(longest) : null,
  }
}
