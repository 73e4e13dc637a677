import { failed, ok, problem, type Result } from '../../kernel/index.js'
import { readDue, readExpired, readExposed, readProcess, readRemarks, type Said } from './cell.js'
import { readFormat } from './format.js'
import type { Known } from './taken.js'
import { readIndex } from './wanted.js'

type ColumnReader = (text: string, known: Known) => Result<Said>

const into = <T>(result: Result<T>, said: (value: T) => Said): Result<Said> =>
  result.ok ? ok(said(result.value)) : result

const wholeIn = (text: string, what: string, low: number, high: number): Result<number> =>
  /^\d{1,4}$/.test(text) && Number(text) >= low && Number(text) <= high
    ? ok(Number(text))
    : failed(problem('intake.count-unusable', { text, what, low, high }))

/** Columns by the names that people give them, in small letters. */
const COLUMNS: readonly (readonly [names: readonly string[], read: ColumnReader])[] = [
  [['film', 'emulsion'], (film) => ok({ film })],
  [['format', 'size', 'length'], (text) => into(readFormat(text), (cut) => cut)],
  [
    ['frames', 'exposures'],
    (text) => into(wholeIn(text, 'frames', 1, 100), (frames) => ({ frames: frames === 36 ? null : frames })),
  ],
  [['sheets'], (text) => into(wholeIn(text, 'sheets', 1, 500), (sheets) => ({ sheets }))],
  [['rolls', 'count', 'how many'], (text) => into(wholeIn(text, 'rolls', 1, 100), (many) => ({ many }))],
  [
    ['index', 'ei', 'exposure index', 'exposed at', 'exposure_index'],
    (text) => into(readIndex(text), (exposure_index) => ({ exposure_index })),
  ],
  [['wanted', 'treatment', 'development', 'develop'], (wanted) => ok({ wanted })],
  [
    ['exposed', 'when', 'date exposed', 'when exposed'],
    (text, known) => into(readExposed(text, known), (exposed) => ({ exposed })),
  ],
  [
    ['expired', 'expired since', 'expired_since'],
    (text) => into(readExpired(text), (expired_since) => ({ expired_since })),
  ],
  [['whose', 'person', 'owner', 'of', 'name'], (text) => ok({ whose: /^(?:mine|own|me)$/i.test(text) ? null : text })],
  [['process', 'chemistry'], (text) => into(readProcess(text), (process) => ({ process }))],
  [['remarks', 'remark'], (text) => into(readRemarks(text), (remarks) => ({ remarks }))],
  [['due', 'due by'], (text, known) => into(readDue(text, known), (due) => ({ due }))],
  [['note', 'notes'], (note) => ok({ note })],
]

const readerOf = (name: string): ColumnReader | undefined =>
  COLUMNS.find(([names]) => names.includes(name.trim().toLowerCase()))?.[1]

/** Whether a first row names columns: film is among them, and one more is known. */
export function namesColumns(cells: readonly string[]): boolean {
  const known = cells.filter((cell) => readerOf(cell) !== undefined)
  return known.length > 1 && cells.some((cell) => ['film', 'emulsion'].includes(cell.toLowerCase()))
}

/** Column names that nothing is known of; what stands below them would be lost. */
export const unknownColumns = (cells: readonly string[]): string[] =>
  cells.filter((cell) => cell !== '' && readerOf(cell) === undefined)

/** What a cell under a column's name says; an empty one says nothing. */
export function underColumn(name: string, text: string, known: Known): Result<Said> {
  const read = readerOf(name)
  return text === '' || read === undefined ? ok({}) : read(text, known)
}
