import { failed, ok, problem, type Result } from '../../kernel/index.js'
import type { Wanted } from './taken.js'

const INDEX = { low: 1, high: 25_600 } as const
const CONTRAST = { low: 0.2, high: 2 } as const

/** Reads an exposure index: `400`, `EI 400`, `at 400`. Whole, from 1 to 25 600. */
export function readIndex(text: string): Result<number> {
  const [, digits] = /^(?:ei|iso|at|index)?[ :]*(\d{1,5})$/i.exec(text.trim()) ?? []
  const index = Number(digits)
  return digits !== undefined && index >= INDEX.low && index <= INDEX.high
    ? ok(index)
    : failed(problem('intake.index-unusable', { text, ...INDEX }, 'exposure_index'))
}

/** Whether a text says how film is to be developed; that it can be is for {@link readWanted} to say. */
export const saysWanted = (text: string): boolean =>
  /^(?:normal(?:ly)?|as usual|as \d.*|(?:push|pull)(?:ed)?\b.*|[+-] ?\d.*|[nN] ?[+-].*|contrast\b.*)$/i.test(
    plain(text),
  )

const plain = (text: string): string => text.trim().replaceAll('−', '-').replaceAll('–', '-')

/**
 * Reads what is wanted: nothing or `normal`, `as 800`, `push to 800`, `push 1`, `+1`, `pull 1/3`, `contrast 0.6`.
 * Stops count from the index it was exposed at; what they come to is an index, rounded as film speeds are printed.
 */
export function readWanted(text: string, exposedAt: number | null): Result<Wanted> {
  const typed = plain(text)
  if (typed === '' || /^(?:normal(?:ly)?|as usual)$/i.test(typed)) return ok({ as: 'normal' })
  const contrast = /^contrast(?: of)? (\d(?:[.,]\d{1,3})?)$/i.exec(typed)?.[1]
  if (contrast !== undefined) return contrastOf(text, Number(contrast.replace(',', '.')))
  const index = /^(?:as|(?:push|pull)(?:ed)? (?:to|as)) (?:ei |iso )?(\d{1,5})$/i.exec(typed)?.[1]
  if (index !== undefined) return asIndex(readIndex(index), exposedAt)
  const stops = stopsIn(typed)
  if (stops === undefined) return failed(problem('intake.wanted-unknown', { text }, 'treatment'))
  if (stops === 0) return ok({ as: 'normal' })
  if (exposedAt === null) return failed(problem('intake.stops-need-index', { text }, 'treatment'))
  return asIndex(readIndex(String(printed(exposedAt * 2 ** stops))), exposedAt)
}

function contrastOf(text: string, contrast: number): Result<Wanted> {
  return contrast >= CONTRAST.low && contrast <= CONTRAST.high
    ? ok({ as: 'contrast', contrast })
    : failed(problem('intake.contrast-out-of-range', { text, ...CONTRAST }, 'treatment'))
}

function asIndex(index: Result<number>, exposedAt: number | null): Result<Wanted> {
  if (!index.ok) return index
  if (index.value === exposedAt) return failed(problem('roll.push-to-own-index', { index: index.value }, 'treatment'))
  return ok({ as: 'index', index: index.value })
}

const FRACTIONS: Readonly<Record<string, number>> = {
  '½': 1 / 2,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '1/2': 1 / 2,
  '1/3': 1 / 3,
  '2/3': 2 / 3,
}

/** `push 1`, `pull ⅓`, `+1`, `N-1`, `push 1 1/3 stops`: stops, a pull below zero. */
function stopsIn(text: string): number | undefined {
  const [, sign = '', whole = '', fraction = ''] =
    /^(push|pull|pushed|pulled|[nN] ?\+|[nN] ?-|\+|-) ?(?:by )?(\d(?:[.,]\d)?)??(?: ?(½|⅓|⅔|1\/[23]|2\/3))?(?: stops?)?$/i.exec(
      text,
    ) ?? []
  if (whole === '' && fraction === '') return undefined
  const count = Number(whole.replace(',', '.') || 0) + (FRACTIONS[fraction] ?? 0)
  if (count > 5) return undefined
  return /^(?:pull|pulled|-|n ?-)$/i.test(sign) ? -count : count
}

/** Thirds of a stop as they are printed on boxes; others are these times or over ten. */
const PRINTED = [100, 125, 160, 200, 250, 320, 400, 500, 640, 800, 1000]

/** The printed index next to a computed one: 1600 for 1587. */
function printed(index: number): number {
  const decade = 10 ** (Math.floor(Math.log10(index)) - 2)
  const apart = (one: number) => Math.abs(Math.log((one * decade) / index))
  return Math.round(PRINTED.reduce((best, one) => (apart(one) < apart(best) ? one : best)) * decade)
}
