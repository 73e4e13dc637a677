/** One row of a list as typed: the number of its first line, the line, and its cells without their quotes. */
export interface Row {
  readonly line: number
  readonly text: string
  readonly cells: readonly string[]
}

/**
 * Parts a list into rows and cells: by tabs where there are any, else by semicolons, else by commas. A cell that
 * begins with a quote goes to the next lone quote, also over line ends, and holds a quote as two (RFC 4180); quotes
 * inside a cell are its own. Blank lines are passed over.
 */
export function rowsOf(text: string): Row[] {
  const plain = text.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n')
  const by = ['\t', ';'].find((sign) => plain.includes(sign)) ?? ','
  const rows: Row[] = []
  let at = 0
  let line = 1
  while (at < plain.length) {
    const { cells, end } = oneRow(plain, at, by)
    const whole = plain.slice(at, end)
    if (whole.trim() !== '') rows.push({ line, text: whole.trim(), cells: cells.map((cell) => cell.trim()) })
    line += whole.split('\n').length
    at = end + 1
  }
  return rows
}

function oneRow(text: string, start: number, by: string): { cells: string[]; end: number } {
  const cells: string[] = []
  let at = start
  for (;;) {
    const quoted = quotedCell(text, at)
    const plainEnd = endOf(text, quoted?.end ?? at, by)
    const rest = text.slice(quoted?.end ?? at, plainEnd)
    cells.push(quoted === null ? rest : quoted.cell + rest.trim())
    if (text[plainEnd] !== by) return { cells, end: plainEnd }
    at = plainEnd + 1
  }
}

/** Where a cell without quotes ends: at the next sign that parts, or the line's end. */
function endOf(text: string, from: number, by: string): number {
  for (let at = from; at < text.length; at++) if (text[at] === by || text[at] === '\n') return at
  return text.length
}

/** A cell in quotes, and where it ends; null for one without, or whose quote is never closed. */
function quotedCell(text: string, from: number): { cell: string; end: number } | null {
  const [, blanks = '', inside] = /^([ ]*)"((?:[^"]|"")*)"/.exec(text.slice(from, from + 6000)) ?? []
  if (inside === undefined) return null
  return { cell: inside.replaceAll('""', '"'), end: from + blanks.length + inside.length + 2 }
}
