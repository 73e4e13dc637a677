import { DAY_MS, instantText } from '../clock.js'
import { type Problem, type ProblemDetails, problem } from '../problems/problem.js'
import type { ProblemCode } from '../problems/registry.js'
import { daysOfMonth, monthName, monthOf, SEASONS, seasonOf } from './calendar.js'
import type { Choice, Reading } from './reading.js'
import { type Naming, tidy } from './text.js'

/** A day where the bench is: `2026-07-14`. */
export type Day = string
/** A day, a month (`2026-07`), a year (`2026`) or a season (`2026-22`, by ISO 8601-2: 21 spring to 24 winter). */
export type PartialDay = string

/** Years that film is dated by: it has been sold on rolls since the 1880s. */
export const YEARS = { low: 1880, high: 2199 } as const

interface DayField {
  readonly what?: string
  /** Today where the bench is. */
  readonly today?: Day
}
type Parts = { readonly year: number; readonly month?: number; readonly day?: number; readonly season?: number }
type Found = { readonly parts: readonly Parts[] } | { readonly problem: Problem } | undefined

/**
 * Reads when something was as far as somebody remembers: `2019`, `summer 2024`, `May 2025`, `3 May 2025`,
 * `2025-05-03`, `3.5.2025`. `3/5/2025` is asked about, because one half of the world puts the month first. The year
 * has four digits, from 1880 to 2199. With `today`, what has not come yet is refused.
 */
export function readPartialDay(text: string, field: DayField = {}): Reading<PartialDay> {
  const naming = { what: field.what ?? 'a date', example: 'summer 2024, 2019 or 3 May 2025' }
  return decided(text, naming, (tidied) => monthOrYear(tidied, naming) ?? wholeDay(tidied, naming), {
    latest: field.today,
  })
}

/**
 * Reads one day: `3 May 2027`, `2027-05-03`, `3.5.2027`; with `today` also `today`, `tomorrow`, `in 10 days`,
 * `in 2 weeks` and, without a year, `3 May`: the next one that comes.
 */
export function readDay(text: string, field: DayField = {}): Reading<Day> {
  const { today } = field
  const naming = { what: field.what ?? 'a day', example: today === undefined ? '3 May 2027' : '3 May or in 2 weeks' }
  return decided(text, naming, (tidied) => (today && fromToday(tidied, today)) || wholeDay(tidied, naming, today), {})
}

/** `3 May 2025`, `May 2025`, `summer 2024`, `2019`; what is none of these stays as it is. */
export function writePartialDay(partial: PartialDay): string {
  const [, year, second, day] = /^(\d{4})(?:-(\d\d))?(?:-(\d\d))?$/.exec(partial) ?? []
  if (year === undefined) return partial
  if (second === undefined) return year
  const season = SEASONS[Number(second) - 21]
  return [...(day === undefined ? [] : [Number(day)]), season ?? monthName(Number(second)), year].join(' ')
}

/** The first day that a partial day can be; a season from when it begins at the earliest, in either half of the world. */
export const earliestDay = (day: PartialDay): Day =>
  day.length === 4 || /-2[1-4]$/.test(day) ? `${day.slice(0, 4)}-01-01` : day.length === 7 ? `${day}-01` : day

function decided(
  text: string,
  naming: Naming,
  read: (tidied: string) => Found,
  { latest }: { latest?: Day | undefined },
): Reading<PartialDay> {
  const tidied = tidy(text, naming)
  if ('problem' in tidied) return { kind: 'refused', problem: tidied.problem }
  const found = read(tidied.text)
  if (found === undefined) return refused('quantity.unreadable', { text: tidied.text, ...naming })
  if ('problem' in found) return { kind: 'refused', problem: found.problem }
  const days = found.parts.map(textOf)
  const [only = '', other] = days
  if (found.parts.some(({ year }) => year < YEARS.low || year > YEARS.high))
    return refused('date.year-out-of-range', { text: tidied.text, ...YEARS })
  if (latest !== undefined && days.every((day) => earliestDay(day) > latest))
    return refused('date.not-yet', { text: tidied.text, what: naming.what, today: writePartialDay(latest) })
  if (other === undefined || other === only) return { kind: 'read', value: only, echo: writePartialDay(only) }
  return asked(
    tidied.text,
    days.map((value) => ({ value, label: writePartialDay(value) })),
  )
}

const refused = (code: ProblemCode, details: ProblemDetails): { kind: 'refused'; problem: Problem } => ({
  kind: 'refused',
  problem: problem(code, details),
})

function asked(text: string, choices: readonly Choice<Day>[]): Reading<Day> {
  const labels = choices.map(({ label }) => label)
  const question = `“${text}” can be ${labels.join(' or ')}. Choose one, or write the month as a word.`
  return { kind: 'asked', problem: problem('quantity.ambiguous', { question, text, choices: labels }), choices }
}

const two = (value: number): string => String(value).padStart(2, '0')
const textOf = ({ year, month, day, season }: Parts): PartialDay =>
  [String(year), ...(season ? [String(season)] : []), ...(month ? [two(month)] : []), ...(day ? [two(day)] : [])].join(
    '-',
  )

/** `2019`, `2025-05`, `05/2025`, `May 2025`, `summer 2024`, `summer of 2024`, `2024 summer`. */
function monthOrYear(text: string, naming: Naming): Found {
  const bare = /^(\d{4})$/.exec(text)
  if (bare) return { parts: [{ year: Number(bare[1]) }] }
  const figures = /^(?:(\d{4})[-/](\d{1,2})|(\d{1,2})[-/.](\d{4}))$/.exec(text)
  if (figures) {
    const [year, month] = [Number(figures[1] ?? figures[4]), Number(figures[2] ?? figures[3])]
    return month >= 1 && month <= 12 ? { parts: [{ year, month }] } : noSuchMonth(text, month, naming)
  }
  const [, first = '', second = ''] = /^(\p{L}+|\d{4})\.?,? (?:of )?(\p{L}+|\d{4})$/iu.exec(text) ?? []
  const [word, digits] = /^\d/.test(first) ? [second, first] : [first, second]
  if (!/^\d{4}$/.test(digits)) return undefined
  const season = seasonOf(word)
  if (season !== undefined) return { parts: [{ year: Number(digits), season }] }
  const month = monthOf(word)
  return month === undefined ? undefined : { parts: [{ year: Number(digits), month }] }
}

const noSuchMonth = (text: string, month: number, naming: Naming): Found => ({
  problem: problem('quantity.impossible', { text, ...naming, reason: `there is no month ${month}` }),
})

/** A day with its month as a word, in the order of the calendar, or in figures; without a year only with a `today`. */
function wholeDay(text: string, naming: Naming, today?: Day): Found {
  const inOrder = /^(\d{4})([-/.])(\d{1,2})\2(\d{1,2})$/.exec(text)
  if (inOrder) return sound(text, [figures(inOrder[1], inOrder[3], inOrder[4])], naming)
  const dotted = /^(\d{1,2})\. ?(\d{1,2})\. ?(\d{4})$/.exec(text)
  if (dotted) return sound(text, [figures(dotted[3], dotted[2], dotted[1])], naming)
  const barred = /^(\d{1,2})([-/])(\d{1,2})\2(\d{4})$/.exec(text)
  if (barred) {
    const [, first, , second, year] = barred
    return sound(text, [figures(year, second, first), figures(year, first, second)], naming)
  }
  const worded =
    /^(?<day>\d{1,2})(?:st|nd|rd|th|\.)? (?:of )?(?<month>\p{L}+)\.?,?(?: (?<year>\d{4}))?$/iu.exec(text) ??
    /^(?<month>\p{L}+)\.? (?<day>\d{1,2})(?:st|nd|rd|th)?,?(?: (?<year>\d{4}))?$/iu.exec(text)
  const { day, month: word = '', year } = worded?.groups ?? {}
  const month = monthOf(word)
  if (month === undefined) return undefined
  if (year !== undefined) return sound(text, [figures(year, month, day)], naming)
  if (today === undefined) return { problem: problem('date.year-missing', { text, what: naming.what }) }
  const thisYear = Number(today.slice(0, 4))
  const inYear = (value: number) => figures(String(value), month, day)
  // The next one that comes; a 29 February may be some years away.
  const next = [0, 1, 2, 3, 4, 5, 6, 7, 8]
    .map((years) => inYear(thisYear + years))
    .find((parts) => exists(parts) && textOf(parts) >= today)
  return sound(text, [next ?? inYear(thisYear)], naming)
}

type Whole = Parts & { readonly month: number; readonly day: number }
const figures = (year = '', month: string | number = '', day = ''): Whole => ({
  year: Number(year),
  month: Number(month),
  day: Number(day),
})
const exists = ({ year, month, day }: Whole): boolean =>
  month >= 1 && month <= 12 && day >= 1 && day <= daysOfMonth(year, month)

function sound(text: string, possible: readonly Whole[], { what, example }: Naming): Found {
  const parts = possible.filter(exists)
  if (parts.length > 0) return { parts }
  const [{ year, month } = { year: 0, month: 0 }] = possible
  const reason =
    month >= 1 && month <= 12
      ? `${monthName(month)} ${year} has ${daysOfMonth(year, month)} days`
      : `there is no month ${month}`
  return { problem: problem('quantity.impossible', { text, what, example, reason }) }
}

/** `today`, `tomorrow`, `in 10 days`, `in a week`, `in 2 weeks`. */
function fromToday(text: string, today: Day): Found {
  const [, count = '', unit = ''] = /^in (a|\d{1,3}) (day|week)s?$/i.exec(text) ?? []
  const days =
    text.toLowerCase() === 'today'
      ? 0
      : text.toLowerCase() === 'tomorrow'
        ? 1
        : unit === ''
          ? undefined
          : (count.toLowerCase() === 'a' ? 1 : Number(count)) * (unit.toLowerCase() === 'week' ? 7 : 1)
  if (days === undefined) return undefined
  const then = instantText(Date.parse(`${today}T00:00:00Z`) + days * DAY_MS)
  return { parts: [figures(then.slice(0, 4), then.slice(5, 7), then.slice(8, 10))] }
}
