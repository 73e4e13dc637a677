import { failed, ok, problem, type Result } from '../../../kernel/index.js'

/** A row of a table in text, and the line of the text it begins on. */
export interface Row {
  readonly line: number
  readonly cells: readonly string[]
}

/**
 * What a table program takes for a formula when a cell begins with it, in both widths, and the sign that says it is
 * none. A cell is written with one more of that sign, and read with one less, so that it comes back as it was.
 */
const RISKY = /^[=+\-@\t\r＝＋－＠']/
const guarded = (text: string): string => (RISKY.test(text) ? `'${text}` : text)
const unguarded = (text: string): string => (text.startsWith("'") ? text.slice(1) : text)

const quoted = (text: string): string => (/[",\r\n]|^\s|\s$/.test(text) ? `"${text.replaceAll('"', '""')}"` : text)

/** A table by RFC 4180: commas, CRLF after every row, quotes doubled inside quotes. */
export const writeCsv = (rows: readonly (readonly string[])[]): string =>
  rows.map((cells) => `${cells.map((cell) => quoted(guarded(cell))).join(',')}\r\n`).join('')

/**
 * Reads such a table, and what table programs make of it: rows that end with LF alone, a byte order mark, semicolons or
 * tabs in place of commas where the heading has them. Anything else that is not RFC 4180 is refused with its line.
 */
export function readCsv(text: string): Result<Row[]> {
  const table = text.startsWith('\ufeff') ? text.slice(1) : text
  const separator = separatorOf(table)
  const rows: Row[] = []
  let [at, line] = [0, 1]
  while (at < table.length) {
    const begins = line
    const cells: string[] = []
    for (let more = true; more; ) {
      const cell = cellAt(table, at, separator)
      if (cell === null) return unreadable(begins, 'a quote is not closed, or something stands beside a quoted cell')
      cells.push(unguarded(cell.text))
      line += cell.lines
      more = table[cell.end] === separator
      at = cell.end + (more ? 1 : 0)
    }
    if (table[at] === '\r') at++
    if (table[at] === '\n') at++
    line++
    rows.push({ line: begins, cells })
  }
  return ok(rows)
}

export const unreadable = (line: number, reason: string): Result<never> =>
  failed(problem('register.unreadable', { where: `line ${line}`, reason }))

/** The first of the usual separators in the heading. */
const separatorOf = (table: string): string => /[,;\t]/.exec(table.split(/\r?\n/, 1)[0] ?? '')?.[0] ?? ','

interface Cell {
  readonly text: string
  /** Where it ends: a separator, the end of the row, or of the text. */
  readonly end: number
  /** Ends of lines inside it. */
  readonly lines: number
}

function cellAt(table: string, start: number, separator: string): Cell | null {
  if (table[start] !== '"') return plainCell(table, start, separator)
  let text = ''
  for (let at = start + 1; ; ) {
    const quote = table.indexOf('"', at)
    if (quote === -1) return null
    text += table.slice(at, quote)
    if (table[quote + 1] !== '"') {
      const end = quote + 1
      return endsCell(table, end, separator) ? { text, end, lines: text.split('\n').length - 1 } : null
    }
    text += '"'
    at = quote + 2
  }
}

function plainCell(table: string, start: number, separator: string): Cell | null {
  let end = start
  while (!endsCell(table, end, separator)) {
    if (table[end] === '"') return null
    end++
  }
  return { text: table.slice(start, end), end, lines: 0 }
}

const endsCell = (table: string, at: number, separator: string): boolean =>
  at >= table.length ||
  table[at] === separator ||
  table[at] === '\n' ||
  (table[at] === '\r' && (table[at + 1] === '\n' || at + 1 === table.length))
