import { failed, ok, problem, type Reading, type Result, readDay, readPartialDay, YEARS } from '../../kernel/index.js'
import { formatIn } from './format.js'
import type { Known, TakenRemark, TakenRoll } from './taken.js'
import { readIndex, saysWanted } from './wanted.js'

/** What cells say of a roll. What is wanted stays as typed, as it may count from an index that comes later. */
export type Said = Partial<Omit<TakenRoll, 'treatment'>> & { readonly wanted?: string; readonly many?: number }

export const PROCESSES: readonly (readonly [RegExp, TakenRoll['process']])[] = [
  [/^(?:black[- ]and[- ]white|black ?& ?white|b ?& ?w|bw)(?: film| negative)?$/i, 'black-and-white'],
  [/^(?:colou?r(?: |-)negative|colou?r neg|neg(?:ative)? colou?r)$/i, 'colour-negative'],
  [/^(?:colou?r(?: |-)(?:reversal|slide)|slides?|reversal)$/i, 'colour-reversal'],
]
const REMARKS: readonly (readonly [RegExp, TakenRemark])[] = [
  [/^found(?: film)?$/i, 'found'],
  [/^(?:expired|out of date)$/i, 'expired'],
  [/^infra-?red(?: film)?$/i, 'infrared'],
  [/^(?:carbon(?:[- ]black)?[- ]backing|motion[- ]picture(?: film| backing)?)$/i, 'carbon-backing'],
  [/^chromogenic$/i, 'chromogenic'],
]

const found = <T>(list: readonly (readonly [RegExp, T])[], text: string): T | undefined =>
  list.find(([pattern]) => pattern.test(text))?.[1]

export const readProcess = (text: string): Result<TakenRoll['process']> => {
  const process = found(PROCESSES, text.trim())
  return process === undefined ? failed(problem('intake.process-unknown', { text }, 'process')) : ok(process)
}

/** Remarks as they are written beside one another: `found, expired`. */
export function readRemarks(text: string): Result<TakenRemark[]> {
  const words = text.split(/[,;+/]| and /).map((word) => word.trim())
  const remarks: TakenRemark[] = []
  for (const word of words.filter(Boolean)) {
    const remark = found(REMARKS, word)
    if (remark === undefined) return failed(problem('intake.remark-unknown', { text: word }, 'remarks'))
    remarks.push(remark)
  }
  return ok([...new Set(remarks)])
}

/** A reading as a result; what has two meanings is refused with both of them. */
const resultOf = <T>(reading: Reading<T>, field: string): Result<T> =>
  reading.kind === 'read' ? ok(reading.value) : failed({ ...reading.problem, field })

export const readExposed = (text: string, { today }: Known): Result<string> =>
  resultOf(readPartialDay(text, { what: 'when it was exposed', today }), 'exposed')
export const readExpired = (text: string): Result<string> =>
  resultOf(readPartialDay(text, { what: 'when it ran out' }), 'expired_since')
export const readDue = (text: string, { today }: Known): Result<string> =>
  resultOf(readDay(text, { what: 'a due day', today }), 'due')

const into = <T>(result: Result<T>, said: (value: T) => Said): Result<Said> =>
  result.ok ? ok(said(result.value)) : result

/** What one cell of a list without column names says, told by what it looks like. */
export function cellIn(text: string, known: Known): Result<Said> {
  const format = formatIn(text)
  if (format !== undefined) return into(format, (cut) => cut)
  const [, label = '', rest = ''] =
    /^(note|due|exposed|expired(?: since)?|of|for|belongs to)[: ] *(.+)$/is.exec(text) ?? []
  if (label !== '') return labelled(label.toLowerCase(), rest.trim(), known)
  if (/^(?:mine|own|my own)$/i.test(text)) return ok({ whose: null })
  const remark = found(REMARKS, text)
  if (remark !== undefined) return ok({ remarks: [remark] })
  const process = found(PROCESSES, text)
  if (process !== undefined) return ok({ process })
  if (saysWanted(text)) return ok({ wanted: text })
  return indexOrDate(text, known)
}

function labelled(label: string, rest: string, known: Known): Result<Said> {
  if (label === 'note') return ok({ note: rest })
  if (label === 'due') return into(readDue(rest, known), (due) => ({ due }))
  if (label === 'exposed') return into(readExposed(rest, known), (exposed) => ({ exposed }))
  if (label.startsWith('expired'))
    return into(readExpired(rest.replace(/^since /i, '')), (expired_since) => ({ expired_since, remarks: ['expired'] }))
  return ok({ whose: rest })
}

function indexOrDate(text: string, known: Known): Result<Said> {
  const number = /^\d{1,5}$/.test(text) ? Number(text) : undefined
  const isYear = number !== undefined && number >= YEARS.low && number <= YEARS.high
  // A 2000 stands on no box beside a year, yet both are honest.
  if (number === 2000) return failed(problem('intake.index-or-year', { text }))
  if ((number !== undefined && !isYear) || /^(?:ei|iso|at|index)[ :]*\d/i.test(text))
    return into(readIndex(text), (exposure_index) => ({ exposure_index }))
  const date = readPartialDay(text, { what: 'when it was exposed', today: known.today })
  if (date.kind === 'read') return ok({ exposed: date.value })
  if (date.kind === 'asked' || date.problem.code !== 'quantity.unreadable')
    return failed({ ...date.problem, field: 'exposed' })
  return failed(problem('intake.cell-unknown', { text }))
}
