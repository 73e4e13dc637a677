import { problem } from '../problems/problem.js'
import { readNumber } from './amount.js'
import type { Choice, Reading } from './reading.js'
import { tidy } from './text.js'
import { millilitres } from './units.js'
import { writeVolume } from './volume.js'

/**
 * How a bath is mixed, in parts by volume: concentrate first, water last, further concentrates between.
 * `{ parts: [1, 4] }` is one part and four parts; `{ parts: [1] }` is undiluted.
 */
export interface Ratio {
  readonly parts: readonly number[]
}

/** What a ratio can be when typed; with these, every ratio is written in fewer characters than a field takes. */
export const RATIO_LIMITS = { parts: 4, low: 0.01, high: 1000 } as const

const STOCK: Ratio = { parts: [1] }
const STOCK_WORDS = new Set(['stock', 'undiluted', 'neat', 'full strength', '1+0', '1 + 0'])
const EXAMPLE_VOLUME = 300
const DECIMALS = 3

/**
 * Reads `1+4`, `1 + 1 + 100`, `25 %`, `stock`. `1:4` is asked about, because half the trade means one and four
 * by it and the other half one in four.
 */
export function readRatio(text: string, field: { readonly what?: string } = {}): Reading<Ratio> {
  const naming = { what: field.what ?? 'a mixing ratio', example: '1 + 4' }
  const tidied = tidy(text, naming)
  if ('problem' in tidied) return { kind: 'refused', problem: tidied.problem }
  const plain = tidied.text
  if (STOCK_WORDS.has(plain.toLowerCase())) return read(STOCK)
  const candidates = percent(plain) ?? sum(plain) ?? proportion(plain)
  const details = { text: plain, ...naming }
  if (candidates === undefined) return { kind: 'refused', problem: problem('quantity.unreadable', details) }
  const possible = candidates.filter(isPossible)
  const [first] = possible
  if (first === undefined)
    return { kind: 'refused', problem: problem('quantity.impossible', { ...details, reason: REASON }) }
  return candidates.length === 1 ? read(first) : asked(plain, possible)
}

/** `1 + 4`, `1 + 1 + 100`, `stock`; parts with at most three decimals. */
export function writeRatio({ parts }: Ratio): string {
  return parts.length === 1 ? 'stock' : parts.map((part) => String(Number(part.toFixed(DECIMALS)))).join(' + ')
}

const REASON = `it has at most ${RATIO_LIMITS.parts} parts, each from ${RATIO_LIMITS.low} to ${RATIO_LIMITS.high}`

const isPossible = ({ parts }: Ratio): boolean =>
  parts.length <= RATIO_LIMITS.parts && parts.every((part) => part >= RATIO_LIMITS.low && part <= RATIO_LIMITS.high)

const read = (value: Ratio): Reading<Ratio> => ({ kind: 'read', value, echo: writeRatio(value) })

function asked(text: string, ratios: readonly Ratio[]): Reading<Ratio> {
  const choices: Choice<Ratio>[] = ratios.map((value) => ({ value, label: `${writeRatio(value)}: ${measured(value)}` }))
  const labels = choices.map(({ label }) => label)
  const question = `“${text}” is read in two ways: ${labels.join('; or ')}. Choose one, or type it with a plus.`
  return { kind: 'asked', problem: problem('quantity.ambiguous', { question, text, choices: labels }), choices }
}

/** What each part comes to in a tank of 300 mL. */
function measured({ parts }: Ratio): string {
  const total = parts.reduce((sum, part) => sum + part, 0)
  const volumes = parts.map((part) => writeVolume(millilitres((EXAMPLE_VOLUME * part) / total), 'metric'))
  return `${volumes.join(' and ')} in ${writeVolume(millilitres(EXAMPLE_VOLUME), 'metric')}`
}

/** Percent of concentrate in the whole: one part and a whole number of parts where that is exact, else out of 100. */
function percent(text: string): Ratio[] | undefined {
  const value = text.endsWith('%') ? readNumber(text.slice(0, -1).trim()) : undefined
  if (value === undefined) return undefined
  if (value === 100) return [STOCK]
  const water = 100 / value - 1
  if (Number.isInteger(water)) return [{ parts: [1, water] }]
  return [{ parts: [value, Number((100 - value).toFixed(9))] }]
}

function sum(text: string): Ratio[] | undefined {
  const parts = numbers(text, '+')
  return parts === undefined ? undefined : [{ parts }]
}

/** With a colon or a slash: two parts are doubtful unless they are equal; three and more can only be parts. */
function proportion(text: string): Ratio[] | undefined {
  const parts = numbers(text, ':') ?? numbers(text, '/')
  const [first, second] = parts ?? []
  if (parts === undefined || first === undefined || second === undefined) return undefined
  const literal = { parts }
  if (parts.length > 2 || first === second) return [literal]
  return [literal, { parts: first < second ? [first, second - first] : [second, first] }]
}

/** Two or more numbers without signs between the given marks; undefined when anything else is there. */
function numbers(text: string, mark: string): number[] | undefined {
  const pieces = text.split(mark).map((piece) => (/^ ?[+-]/.test(piece) ? undefined : readNumber(piece.trim())))
  const read = pieces.filter((piece) => piece !== undefined)
  return pieces.length > 1 && read.length === pieces.length ? read : undefined
}
