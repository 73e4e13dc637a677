import { problem } from '../problems/problem.js'
import { type Amount, readAmount } from './amount.js'
import type { Reading } from './reading.js'
import { type Candidate, type Subject, settle } from './settle.js'
import { plainUnit, tidy } from './text.js'
import type { UnitSystem } from './units.js'
import { measure, plainNumber } from './write.js'

/** A unit that people type: how it is printed, how it may be spelt (see `plainUnit`), how it becomes the inner unit. */
export interface Unit {
  readonly sign: string
  readonly names: readonly string[]
  readonly toInner: (value: number) => number
}

/** What a number without a unit means, and from where on that is doubtful because another unit may be meant. */
export interface Bare {
  readonly unit: Unit
  readonly doubt?: { readonly below?: number; readonly above?: number; readonly other: Unit }
}

/** A quantity that is one number with one unit. */
export interface Scale<T extends number> {
  readonly what: string
  readonly example: Readonly<Record<UnitSystem, string>>
  readonly units: readonly Unit[]
  readonly bare: Readonly<Record<UnitSystem, Bare>>
  readonly possible: { readonly low: number; readonly high: number }
  /** For differences: a plus is shown before what is above zero. */
  readonly signed?: true
  readonly make: (value: number) => T
  readonly write: (value: T, system: UnitSystem) => string
}

/** The field that a text was typed into. Without `low` and `high` the whole range of the quantity is taken. */
export interface Field<T extends number> {
  readonly system: UnitSystem
  /** The field in a sentence, with its article: `the temperature of the fixer`. */
  readonly what?: string
  readonly low?: T
  readonly high?: T
}

/** A unit that is a multiple of the inner one. */
export const multiple = (sign: string, factor: number, ...names: string[]): Unit => ({
  sign,
  names: [plainUnit(sign), ...names],
  toInner: (value) => value * factor,
})

/** Reads one number with one unit. A typed unit is believed; without one the field's unit is taken, or asked about. */
export function readOn<T extends number>(scale: Scale<T>, text: string, field: Field<T>): Reading<T> {
  const subject = subjectOf(scale, field)
  const tidied = tidy(text, subject)
  if ('problem' in tidied) return { kind: 'refused', problem: tidied.problem }
  const amount = readAmount(tidied.text)
  const candidates = amount === undefined ? [] : meanings(scale, amount, field.system)
  if (candidates.length === 0) {
    const { what, example } = subject
    return { kind: 'refused', problem: problem('quantity.unreadable', { text: tidied.text, what, example }) }
  }
  return settle(tidied.text, candidates, subject)
}

function subjectOf<T extends number>(scale: Scale<T>, field: Field<T>): Subject<T> {
  return {
    what: field.what ?? scale.what,
    example: scale.example[field.system],
    low: field.low ?? scale.possible.low,
    high: field.high ?? scale.possible.high,
    make: scale.make,
    write: (value) => scale.write(value, field.system),
  }
}

/** Every way to understand the amount, the literal one first; none when its unit is not in the table. */
function meanings<T extends number>(scale: Scale<T>, amount: Amount, system: UnitSystem): Candidate[] {
  const bare = scale.bare[system]
  const unit = amount.rest === '' ? bare.unit : named(scale.units, amount.rest)
  if (unit === undefined) return []
  const doubtful = amount.rest === '' && isDoubtful(amount.value, bare) ? [bare.doubt?.other ?? unit] : []
  const meanings: [number, Unit][] = [
    [amount.value, unit],
    ...doubtful.map((other): [number, Unit] => [amount.value, other]),
  ]
  if (amount.grouped !== undefined) meanings.push([amount.grouped, unit])
  return meanings.map(([value, taken]) => meaning(value, taken, scale.signed === true && value > 0 ? '+' : ''))
}

/** Shown as it was typed; followed by what it is in the unit of the field when that is another one. */
function meaning(value: number, unit: Unit, plus: string): Candidate {
  const typed = measure(plus + plainNumber(value), unit.sign)
  return {
    value: unit.toInner(value),
    shown: (written) => (written.endsWith(measure('', unit.sign)) ? typed : `${typed} = ${written}`),
  }
}

function named(units: readonly Unit[], written: string): Unit | undefined {
  const name = plainUnit(written)
  return units.find(({ names }) => names.includes(name))
}

function isDoubtful(value: number, { doubt }: Bare): boolean {
  return value < (doubt?.below ?? Number.NEGATIVE_INFINITY) || value > (doubt?.above ?? Number.POSITIVE_INFINITY)
}
