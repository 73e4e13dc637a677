import { celsius, type Result } from '../../src/kernel/index.js'
import type { TimeRecord } from '../../src/lab/index.js'
import { LIMITS } from '../../src/science/index.js'

/** A time in seconds at a temperature in °C, or why there is none: what the program answers. */
export type TimeAt = (temperature: number) => Result<number>

interface Range {
  readonly from: number
  readonly to: number
}

const STEP = 0.01
const FIRST = 10
const LAST = 40
/** Degrees that went through °F differ by their last digits. */
const SLACK = 1e-6

/**
 * Where a record's own words let a time be given. Written out from what is stated, not asked of the basis: a
 * single bath by its sheet, a lone point of it with a small tolerance; else the stated range, else the usual one.
 */
export function limitsOf({ kind, points, usable }: TimeRecord): Range {
  const temperatures = points.map((point) => point.temperature)
  const [first, last] = [Math.min(...temperatures), Math.max(...temperatures)]
  if (kind === 'fixed') return { from: LIMITS.temperature.from, to: LIMITS.temperature.to }
  if (kind === 'single-bath') {
    const within = points.length === 1 ? LIMITS.singleBathTolerance.within : 0
    return { from: first - within, to: last + within }
  }
  return usable ?? { from: Math.min(LIMITS.usable.from, first), to: Math.max(LIMITS.usable.to, last) }
}

const EVERY_STEP = Array.from({ length: Math.round((LAST - FIRST) / STEP) + 1 }, (_, place) => FIRST + place * STEP)

/**
 * The steepest that ln t can honestly be per °C: between two points three times their secant (a monotone cubic is
 * never steeper), past the ends the coefficient. A sixth more for the Arrhenius law, whose slope per °C at 10 °C is
 * that much above its mean between 15 and 25 °C or between two points.
 */
export function steepest({ points, kind }: TimeRecord, coefficient: number): number {
  if (kind === 'fixed') return 0
  const sorted = [...points].sort((one, other) => one.temperature - other.temperature)
  const secants = sorted.slice(1).map((point, place) => {
    const before = sorted[place] as (typeof sorted)[number]
    return (3 * Math.abs(Math.log(point.time / before.time))) / (point.temperature - before.temperature)
  })
  return Math.max(Math.log(coefficient) / 10, ...secants) * (7 / 6)
}

/**
 * What is wrong with the times of a record over the whole scale, in words; nothing when all is as it should be:
 * a time inside its limits and only there, no step larger than its surroundings allow, never longer when warmer
 * (ordinary), always the same (fixed).
 */
export function troubles(record: TimeRecord, coefficient: number, at: TimeAt): string[] {
  const limits = limitsOf(record)
  const steep = steepest(record, coefficient)
  const found: string[] = []
  let run: number[] = []
  let before = Number.NaN
  for (const temperature of EVERY_STEP) {
    const answer = at(temperature)
    const inside = temperature >= limits.from - SLACK && temperature <= limits.to + SLACK
    if (answer.ok !== inside) found.push(`${temperature.toFixed(2)} °C: ${answer.ok ? 'a time' : answer.problem.code}`)
    if (!answer.ok) {
      found.push(...unsteady(record, run, steep, before))
      run = []
    }
    if (answer.ok) run.push(Math.log(answer.value))
    before = temperature
  }
  return [...found, ...unsteady(record, run, steep, before)]
}

/** Third differences of a monotone cubic over 1 °C are smaller; a leap of a 200 000th of the time is not. */
const BEND = 5e-6

/**
 * Whether a step lies outside all that the steps on either side of it lead one to expect: as its neighbour, or going
 * on as its two neighbours on that side do. A corner at a sheet point is smooth from one side; a leap is from neither.
 */
function isLeap(steps: readonly number[], place: number): boolean {
  const expected = [-1, 1].flatMap((side) => {
    const [near, far] = [steps[place + side], steps[place + 2 * side]]
    if (near === undefined) return []
    return far === undefined ? [near] : [near, 2 * near - far]
  })
  const step = steps[place] as number
  return expected.length > 0 && (step > Math.max(...expected) + BEND || step < Math.min(...expected) - BEND)
}

/** `lnTimes` at neighbouring hundredths, the last one at `end`. */
function unsteady({ kind }: TimeRecord, lnTimes: readonly number[], steep: number, end: number): string[] {
  const steps = lnTimes.slice(1).map((value, place) => value - (lnTimes[place] as number))
  return steps.flatMap((step, place) => {
    const where = `step ${steps.length - place} before ${end.toFixed(2)} °C: ln t by ${step}`
    const alone = isLeap(steps, place)
    const tooSteep = Math.abs(step) > steep * STEP + 1e-9
    const slower = kind === 'ordinary' && step > 1e-12
    const moved = kind === 'fixed' && step !== 0
    return alone || tooSteep || slower || moved ? [where] : []
  })
}

/** At each sheet point the sheet's own time, and next to it no leap. */
export function offSheet({ points, kind }: TimeRecord, steep: number, at: TimeAt): string[] {
  const nearby = kind === 'single-bath' ? [0] : [-1e-4, 0, 1e-4]
  return points.flatMap(({ temperature, time }) =>
    nearby.flatMap((aside) => {
      const answer = at(celsius(temperature + aside))
      if (!answer.ok) return aside === 0 ? [`${temperature} °C: ${answer.problem.code}`] : []
      const off = Math.abs(Math.log(answer.value / time))
      return off > steep * Math.abs(aside) + 1e-9 ? [`${temperature + aside} °C: ${answer.value} s for ${time} s`] : []
    }),
  )
}
