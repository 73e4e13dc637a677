import { failed, ok, type Problem, problem, type Result } from '../../kernel/index.js'
import { NEWEST } from '../migrations/index.js'
import { tablesInBackup } from '../tables.js'
import { FORMAT, FORMAT_VERSION, type Head, LinesSum, type RowLine, type Tail } from './format.js'

export const unreadable = (reason: string): Problem => problem('house.backup-unreadable', { reason })

type Line = Partial<Head> & Partial<RowLine> & Partial<Omit<Tail, 'version'>>

/**
 * Checks the lines of a backup one by one (with or without their line feeds), handing good rows on; at the end count and checksum decide.
 * Whatever was handed on before a failure has to be thrown away by the caller.
 */
export async function checkLines(
  lines: AsyncIterable<string>,
  take: (text: string) => void | Promise<void>,
): Promise<Result<{ head: Head; rows: number }>> {
  const sum = new LinesSum()
  let head: Head | undefined
  let rows = 0
  let number = 0
  let ended = false
  for await (const given of lines) {
    const text = given.endsWith('\n') ? given.slice(0, -1) : given
    number++
    // The line feed at the very end of a file may show as an empty line.
    if (ended && text === '') continue
    if (ended) return failed(unreadable(`something follows its end, in line ${number}`))
    const line = parsed(text)
    if (!line) return failed(unreadable(`line ${number} is not JSON`))
    if (!head) {
      const read = readHead(line)
      if (!read.ok) return read
      head = read.value
    } else if (line.end === true) {
      if (line.rows !== rows) return failed(unreadable(`it says ${line.rows} rows and holds ${rows}`))
      if (line.sha256 !== sum.hex()) return failed(unreadable('its checksum does not fit its content'))
      ended = true
      continue
    } else {
      if (!isRow(line, head)) return failed(unreadable(`line ${number} is not a row of a known table`))
      rows++
      await take(text)
    }
    sum.add(text)
  }
  if (!head) return failed(unreadable('it is empty'))
  if (!ended) return failed(unreadable(`its end is missing; it breaks off after line ${number}`))
  return ok({ head, rows })
}

function parsed(text: string): Line | undefined {
  try {
    const value: unknown = JSON.parse(text)
    return typeof value === 'object' && value !== null ? (value as Line) : undefined
  } catch {
    return undefined
  }
}

function readHead(line: Line): Result<Head> {
  const { format, version, dataVersion, tables } = line
  if (format !== FORMAT) return failed(unreadable('its first line does not say that it is one'))
  if (typeof dataVersion !== 'number' || !Number.isInteger(dataVersion) || dataVersion < 1 || !Array.isArray(tables))
    return failed(unreadable('its first line is incomplete'))
  if (version !== FORMAT_VERSION || dataVersion > NEWEST)
    return failed(problem('house.backup-newer', { found: dataVersion, known: NEWEST }))
  const known = new Set<unknown>(tablesInBackup().map((table) => table.name))
  const strange = tables.find((table) => !known.has(table))
  if (strange !== undefined) return failed(unreadable(`it names the table “${strange}”, which is not known`))
  return ok(line as Head)
}

function isRow(line: Line, head: Head): boolean {
  const { t, r } = line
  if (t === undefined || !head.tables.includes(t) || typeof r !== 'object' || r === null || Array.isArray(r))
    return false
  return Object.values(r).every((value) => value === null || typeof value === 'string' || typeof value === 'number')
}
