import { failed, ok, type Problem, problem, type Result } from '../../kernel/index.js'
import { cellIn, type Said } from './cell.js'
import { namesColumns, underColumn, unknownColumns } from './columns.js'
import { type Row, rowsOf } from './rows.js'
import type { Known, TakenRoll } from './taken.js'
import { readWanted } from './wanted.js'

/** Rolls that one list takes in at most. */
export const MOST_ROLLS = 500

/** One line of a list as it was read: the rolls it gives, or what is wrong with it. */
export interface ReadLine {
  readonly line: number
  readonly text: string
  readonly rolls: readonly TakenRoll[]
  readonly troubles: readonly Problem[]
  /** Set on a line that only says whose the next ones are: a name, or null for one's own. */
  readonly whose?: string | null
}

/**
 * Reads a list of rolls as people write or export it. With a first row of column names, cells go by these. Without,
 * the first cell is the film, `3 × Tarn 100` three rolls of it, and the others are told by what they look like. A line
 * such as `Ida:` says whose the following ones are. Every line is read by itself: a wrong one names its own troubles.
 */
export function readRollList(text: string, known: Known): ReadLine[] {
  const rows = rowsOf(text)
  const [first] = rows
  if (first !== undefined && namesColumns(first.cells)) return byColumns(first, rows.slice(1), known)
  let whose: string | null = null
  const lines = rows.map((row): ReadLine => {
    const heading = headingIn(row)
    if (heading === undefined) return readLine(row, saidInLine(row.cells, known), { whose }, known)
    whose = heading
    return { line: row.line, text: row.text, rolls: [], troubles: [], whose }
  })
  return notTooMany(lines)
}

function byColumns(head: Row, rows: readonly Row[], known: Known): ReadLine[] {
  const unknown = unknownColumns(head.cells).map((name) => problem('intake.column-unknown', { name }))
  const headLine: ReadLine = { line: head.line, text: head.text, rolls: [], troubles: unknown }
  const lines = rows.map((row) => {
    const said = head.cells.map((name, place) => underColumn(name, row.cells[place] ?? '', known))
    const beyond = row.cells.slice(head.cells.length).filter(Boolean)
    const extra = beyond.map((cell) => failed(problem('intake.cell-beyond', { text: cell })))
    return readLine(row, [...said, ...extra], {}, known)
  })
  return notTooMany([headLine, ...lines])
}

/** `Ida:` alone on a line. */
function headingIn({ cells }: Row): string | null | undefined {
  const filled = cells.filter(Boolean)
  const name = filled.length === 1 ? /^([^:]{1,120}):$/.exec(filled[0] as string)?.[1]?.trim() : undefined
  if (name === undefined) return undefined
  return /^(?:mine|own|my own)$/i.test(name) ? null : name
}

function saidInLine([first = '', ...rest]: readonly string[], known: Known): Result<Said>[] {
  const [, many = '1', film = ''] = /^(?:(\d{1,3}) ?[x×] )?(.*)$/su.exec(first) ?? []
  return [ok({ film, many: Number(many) }), ...rest.filter(Boolean).map((cell) => cellIn(cell, known))]
}

function readLine(row: Row, said: readonly Result<Said>[], given: Said, known: Known): ReadLine {
  const troubles = said.flatMap((one) => (one.ok ? [] : one.problem))
  const merged = mergedOf(given, said, troubles)
  if (troubles.length > 0) return { line: row.line, text: row.text, rolls: [], troubles }
  const roll = rollOf(merged, known)
  if (!roll.ok) return { line: row.line, text: row.text, rolls: [], troubles: [roll.problem] }
  const rolls = Array.from({ length: merged.many ?? 1 }, () => roll.value)
  return { line: row.line, text: row.text, rolls, troubles: [] }
}

/** All that a line says, later cells over what was given before; the same thing said twice is a trouble. */
function mergedOf(given: Said, said: readonly Result<Said>[], troubles: Problem[]): Said {
  let merged: Said = {}
  for (const one of said) {
    if (!one.ok) continue
    const twice = Object.keys(one.value).find(
      (key) => key in merged && key !== 'remarks' && key !== 'frames' && key !== 'sheets',
    )
    if (twice !== undefined) troubles.push(problem('intake.said-twice', { what: WORDS[twice] ?? twice }, twice))
    merged = { ...merged, ...one.value, ...joinedRemarks(merged, one.value) }
  }
  return { ...given, ...merged }
}

const joinedRemarks = (a: Said, b: Said): Said =>
  a.remarks && b.remarks ? { remarks: [...new Set([...a.remarks, ...b.remarks])] } : {}

const WORDS: Readonly<Record<string, string>> = {
  format: 'the format',
  exposure_index: 'the index',
  wanted: 'what is wanted',
  exposed: 'when it was exposed',
  expired_since: 'since when it is expired',
  whose: 'whose it is',
  process: 'the chemistry',
  due: 'the due day',
  note: 'a note',
}

const missing = (what: string, example: string, field: string) =>
  failed(problem('intake.missing', { what, example }, field))

/** A roll by all that is said of it, or what is missing or does not go together. */
export function rollOf(said: Said, known: Known): Result<TakenRoll> {
  const film = said.film?.trim() ?? ''
  if (film === '') return missing('The film', 'Tarn 100', 'film')
  if (film.length > 120) return failed(problem('intake.name-too-long', { length: film.length, most: 120 }, 'film'))
  if (said.format === undefined) return missing('The format', '135-36, 120 or 4×5', 'format')
  const remarks = said.remarks ?? []
  const process =
    said.process ?? known.processOf(film) ?? (remarks.includes('chromogenic') ? 'colour-negative' : undefined)
  if (process === undefined && /colou?r|slide|chrome/i.test(film))
    return failed(problem('intake.sounds-colour', { film }, 'process'))
  if (remarks.includes('chromogenic') && process !== 'colour-negative')
    return failed(problem('roll.chromogenic-is-colour', {}, 'process'))
  const sheets = said.sheets ?? 1
  if (sheets > 1 && !said.format.includes('x'))
    return failed(problem('roll.sheets-of-sheets-only', { format: said.format, sheets }, 'sheets'))
  const frames = said.frames ?? null
  if (frames !== null && said.format !== '135')
    return failed(problem('roll.frames-of-135-only', { format: said.format, frames }, 'frames'))
  const exposure_index = said.exposure_index ?? null
  const treatment = readWanted(said.wanted ?? '', exposure_index)
  if (!treatment.ok) return treatment
  return ok({
    film,
    process: process ?? 'black-and-white',
    format: said.format,
    frames,
    sheets,
    whose: said.whose ?? null,
    exposure_index,
    treatment: treatment.value,
    exposed: said.exposed ?? null,
    expired_since: said.expired_since ?? null,
    remarks,
    due: said.due ?? null,
    note: said.note ?? '',
  })
}

/** From the line on that goes beyond what one list may hold, each says so. */
function notTooMany(lines: readonly ReadLine[]): ReadLine[] {
  let count = 0
  return lines.map((line) => {
    count += line.rolls.length
    if (count <= MOST_ROLLS || line.rolls.length === 0) return line
    return { ...line, rolls: [], troubles: [problem('intake.too-many', { count, most: MOST_ROLLS })] }
  })
}
