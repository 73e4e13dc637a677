import { type Celsius, failed, ok, type Problem, problem, type Result, type Seconds } from '../../kernel/index.js'
import { sayDegrees, short } from '../saying.js'
import { timeBand } from './band.js'
import { curveOf, possibleTime, timeOn } from './curve.js'
import type { DevelopingTime, Factor, Modifier, Origin, Position, TimeBasis } from './definition.js'
import { LIMITS } from './limits.js'
import { type Indexes, isOwnIndex } from './practice.js'
import { assumedCoefficient, shortTime, temperatureWarnings } from './warnings.js'

/** What is asked beside the temperature. */
export interface TimeQuestion {
  readonly modifiers?: readonly Modifier[]
  /** Give or take of the thermometer, °C, 0 to 5; 0.5 when nothing is said. */
  readonly thermometerError?: number
  /** The index that the time is for and the one the film was exposed at, where they are known. */
  readonly indexes?: Indexes
}

/**
 * How long to develop at a temperature: reference time × temperature factor × every modifier, with the
 * factors kept, the band and the warnings. A fixed time is never moved by temperature.
 *
 * Refused: a temperature the basis gives no time for, a factor outside 0.3–4, two factors for push or pull or one on
 * top of a time that is the index's own, a thermometer error outside 0–5 °C, an answer outside 0:01–24:00:00.
 */
export function developingTime(
  basis: TimeBasis,
  temperature: Celsius,
  question: TimeQuestion = {},
): Result<DevelopingTime> {
  const modifiers = question.modifiers ?? []
  const thermometerError = question.thermometerError ?? LIMITS.thermometerError.usual
  const wrong = wrongFactor(modifiers) ?? pushedTwice(modifiers, question.indexes) ?? wrongError(thermometerError)
  if (wrong !== null) return failed(wrong)
  const unmodified = timeOn(basis, temperature)
  if (!unmodified.ok) return unmodified
  const { position } = curveOf(basis).place(temperature)
  const factors = [temperatureFactor(basis, unmodified.value, position), ...modifiers]
  const product = modifiers.reduce((all, { factor }) => all * factor, 1)
  const time = possibleTime(unmodified.value * product, temperature)
  if (!time.ok) return time
  return ok({
    temperature,
    time: time.value,
    reference: basis.reference,
    position,
    factors,
    band: timeBand(basis, temperature, { unmodified: unmodified.value, product, thermometerError }),
    law: basis.law,
    warnings: [
      ...temperatureWarnings(basis, temperature, temperature),
      ...assumedCoefficient(basis, temperature, time.value),
      ...shortTime(basis, time.value),
    ],
  })
}

function temperatureFactor(basis: TimeBasis, unmodified: Seconds, position: Position): Factor {
  return { name: 'temperature', factor: unmodified / basis.reference.time, origin: originAt(basis, position) }
}

function originAt(basis: TimeBasis, position: Position): Origin {
  if (position === 'fixed' || position === 'sheet-point') return 'sheet'
  return position === 'between' ? 'law' : basis.coefficient.origin
}

function wrongFactor(modifiers: readonly Modifier[]): Problem | null {
  const { from: low, to: high } = LIMITS.factor
  const index = modifiers.findIndex(({ factor }) => !(factor >= low && factor <= high))
  const wrong = modifiers[index]
  if (wrong === undefined) return null
  return problem(
    'times.bad-factor',
    { factor: short(wrong.factor, 3), name: wrong.name, low, high },
    `modifiers[${index}].factor`,
  )
}

/** Push or pull is the sheet's time for that index or one factor, never both. */
function pushedTwice(modifiers: readonly Modifier[], indexes: Indexes | undefined): Problem | null {
  const pushes = modifiers.filter(({ name }) => name === 'push-pull').length
  if (pushes > 1) return problem('times.two-pushes', { count: pushes }, 'modifiers')
  if (pushes === 0 || indexes === undefined || !isOwnIndex(indexes)) return null
  return problem('times.push-twice', { index: indexes.exposedAt }, 'modifiers')
}

function wrongError(thermometerError: number): Problem | null {
  const { most } = LIMITS.thermometerError
  if (thermometerError >= 0 && thermometerError <= most) return null
  const details = {
    text: sayDegrees(thermometerError),
    what: 'the error of a thermometer',
    low: sayDegrees(0),
    high: sayDegrees(most),
  }
  return problem('quantity.out-of-range', details, 'thermometerError')
}
