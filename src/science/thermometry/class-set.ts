import { type Celsius, type CelsiusDegrees, failed, ok, problem, type Result } from '../../kernel/index.js'
import { wrongCheck } from './correction.js'

/** What a thermometer of a set read, °C. */
export interface SetReading {
  readonly name: string
  readonly read: Celsius
}

/** A thermometer of a set with its offset and correction. */
export interface SetMember extends SetReading {
  /** Read minus the compared temperature: above 0 reads high. */
  readonly offset: CelsiusDegrees
  /** To be added to its readings. */
  readonly correction: CelsiusDegrees
}

/** Several thermometers compared in one beaker: the offset of each, and how far they spread. Degrees Celsius. */
export interface ClassSet {
  /** What the offsets are against. The median is no truth: say so beside it, with the spread. */
  readonly against: 'reference' | 'median'
  readonly temperature: Celsius
  readonly members: readonly SetMember[]
  /** Highest minus lowest reading. */
  readonly spread: CelsiusDegrees
  readonly mean: Celsius
  /** Scatter of single thermometers (n − 1). */
  readonly standardDeviation: CelsiusDegrees
}

/**
 * Several thermometers read in one beaker: the offset of each against the reference among them
 * (`referenceIndex`), or against the median when none is trusted.
 * Refused: fewer than two, one named twice, one more than 5 °C from the compared temperature.
 */
export function classSet(readings: readonly SetReading[], referenceIndex: number | null): Result<ClassSet> {
  if (readings.length < 2)
    return failed(problem('thermometer.class-set-too-small', { count: readings.length }, 'readings'))
  const names = readings.map(({ name }) => name)
  const twice = names.findIndex((name, index) => names.indexOf(name) !== index)
  if (twice !== -1)
    return failed(problem('thermometer.same-twice', { name: names[twice] as string }, `readings[${twice}]`))
  const reads = readings.map(({ read }) => read as number)
  const reference = referenceIndex === null ? undefined : readings[referenceIndex]
  if (referenceIndex !== null && reference === undefined)
    return failed(
      problem(
        'quantity.out-of-range',
        { text: String(referenceIndex), what: 'the place of the reference', low: 0, high: readings.length - 1 },
        'referenceIndex',
      ),
    )
  const temperature = reference?.read ?? (median(reads) as Celsius)
  for (const [index, { read }] of readings.entries()) {
    const wrong = wrongCheck({ read, true: temperature }, `readings[${index}]`)
    if (wrong !== null) return failed(wrong)
  }
  return ok(described(readings, temperature, reference === undefined ? 'median' : 'reference'))
}

function described(readings: readonly SetReading[], temperature: Celsius, against: ClassSet['against']): ClassSet {
  const reads = readings.map(({ read }) => read as number)
  const mean = reads.reduce((total, read) => total + read, 0) / reads.length
  const squares = reads.reduce((total, read) => total + (read - mean) ** 2, 0)
  return {
    against,
    temperature,
    members: readings.map(({ name, read }) => ({
      name,
      read,
      offset: (read - temperature) as CelsiusDegrees,
      correction: (temperature - read) as CelsiusDegrees,
    })),
    spread: (Math.max(...reads) - Math.min(...reads)) as CelsiusDegrees,
    mean: mean as Celsius,
    standardDeviation: Math.sqrt(squares / (reads.length - 1)) as CelsiusDegrees,
  }
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((one, other) => one - other)
  const upper = sorted[sorted.length >> 1] as number
  return sorted.length % 2 === 1 ? upper : ((sorted[(sorted.length >> 1) - 1] as number) + upper) / 2
}
