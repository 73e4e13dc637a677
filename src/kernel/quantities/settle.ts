import { problem } from '../problems/problem.js'
import type { Reading } from './reading.js'
import type { Naming } from './text.js'

/** A field with its range and its way of writing, as far as deciding on a reading needs it. */
export interface Subject<T extends number> extends Naming {
  readonly low: number
  readonly high: number
  readonly make: (value: number) => T
  readonly write: (value: T) => string
}

/** One way to understand a text: a value in the inner unit, and how that reading is shown beside the field. */
export interface Candidate {
  readonly value: number
  readonly shown: (written: string) => string
}

/**
 * Decides between the ways to understand a text. The first candidate takes the text at its word.
 * Candidates outside the field's range fall away; when none is left the text is refused with the range.
 * When only the first is left it is read. Otherwise the person is asked, even if a single other reading is left:
 * a unit that nobody typed is never put in silently.
 */
export function settle<T extends number>(
  text: string,
  candidates: readonly Candidate[],
  subject: Subject<T>,
): Reading<T> {
  const distinct = candidates.filter((one, at) => candidates.findIndex(({ value }) => value === one.value) === at)
  const possible = distinct.flatMap((one) => {
    const value = within(one.value, subject)
    if (value === undefined) return []
    const made = subject.make(value)
    return [{ first: one === distinct[0], choice: { value: made, label: one.shown(subject.write(made)) } }]
  })
  const [only, ...others] = possible
  if (only === undefined) return { kind: 'refused', problem: problem('quantity.out-of-range', outside(text, subject)) }
  if (only.first && others.length === 0) return { kind: 'read', value: only.choice.value, echo: only.choice.label }
  return ask(
    text,
    possible.map(({ choice }) => choice),
    subject,
  )
}

/** The asked form of a reading: what the text can mean, and that the unit settles it. */
export function ask<T extends number>(
  text: string,
  choices: readonly { value: T; label: string }[],
  subject: Subject<T>,
): Reading<T> {
  const { low, high } = bounds(subject)
  const labels = choices.map(({ label }) => label)
  const question =
    labels.length === 1
      ? `“${text}” as it stands is outside ${low} to ${high}. Is ${labels[0]} meant? Type it with its unit.`
      : `“${text}” can be ${labels.join(' or ')}. Choose one, or type it with its unit.`
  return { kind: 'asked', problem: problem('quantity.ambiguous', { question, text, choices: labels }), choices }
}

/** The value, moved onto a bound that it misses only by the rounding of a conversion; undefined outside. */
function within(value: number, { low, high }: { low: number; high: number }): number | undefined {
  const slack = 1e-9
  if (value < low) return low - value <= slack ? low : undefined
  if (value > high) return value - high <= slack * Math.max(1, high) ? high : undefined
  return value
}

function bounds<T extends number>({ low, high, make, write }: Subject<T>): { low: string; high: string } {
  return { low: write(make(low)), high: write(make(high)) }
}

const outside = <T extends number>(text: string, subject: Subject<T>) => ({
  text,
  what: subject.what,
  ...bounds(subject),
})
