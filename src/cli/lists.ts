import { readFile } from 'node:fs/promises'
import {
  all,
  failed,
  ok,
  problem,
  type Result,
  readDuration,
  readTemperature,
  type UnitSystem,
} from '../kernel/index.js'
import type { CourseReading } from '../science/index.js'
import { typed, usage } from './output.js'

const MOST_BYTES = 1_000_000

/** A list from a file, or from standard input when the name is `-` or missing. */
export async function listText(file: string | undefined): Promise<Result<string>> {
  const text = file === undefined || file === '-' ? await standardInput() : await fromFile(file)
  if (!text.ok) return text
  return text.value.length > MOST_BYTES ? failed(problem('command.list-too-long', { most: '1 MB' })) : text
}

async function standardInput(): Promise<Result<string>> {
  let text = ''
  for await (const chunk of process.stdin.setEncoding('utf8')) {
    text += chunk
    if (text.length > MOST_BYTES) break
  }
  return ok(text)
}

async function fromFile(file: string): Promise<Result<string>> {
  try {
    return ok(await readFile(file, 'utf8'))
  } catch (thrown) {
    return failed(
      problem('house.file-unreadable', { file, reason: (thrown as NodeJS.ErrnoException).code ?? String(thrown) }),
    )
  }
}

/** The lines of a list that say something, apart from its heading: a first line without digits. `#` begins a remark. */
export function rowsOf(text: string): { readonly heading: string | null; readonly rows: readonly string[] } {
  const lines = text
    .split(/\r?\n/)
    .map((line) => line.trim())
    .filter((line) => line !== '' && !line.startsWith('#'))
  const [first] = lines
  return first !== undefined && !/\d/.test(first)
    ? { heading: first, rows: lines.slice(1) }
    : { heading: null, rows: lines }
}

/** The cells of a row, parted by commas, semicolons, tabs or spaces. */
export const cellsOf = (row: string): string[] => row.split(/\s*[,;\t]\s*|\s+/).filter((cell) => cell !== '')

/** Every cell of a row as a number with a point; the row is quoted when one is not. */
export function numbersIn(row: string, like: string): Result<number[]> {
  const cells = cellsOf(row)
  return cells.every((cell) => /^[-+−]?\d+(\.\d+)?$/.test(cell))
    ? ok(cells.map((cell) => Number(cell.replace('−', '-'))))
    : failed(usage(`“${row}” is not a row of numbers, like “${like}”.`))
}

/** Readings, one a line: `0:00 20.0`, `2:30, 21.4 °C`. */
export const readingsIn = (text: string, system: UnitSystem): Result<CourseReading[]> =>
  all(rowsOf(text).rows.map((row) => readingIn(row, system)))

function readingIn(row: string, system: UnitSystem): Result<CourseReading> {
  const cut = row.match(/^(\S+?(?:\s*(?:min|s|sec))?)\s*[,;\t ]\s*(\S.*)$/)
  if (!cut) return failed(usage(`“${row}” is not a reading. Write the moment and the temperature, like “2:30 21.4C”.`))
  const at = typed(readDuration(cut[1] as string, { what: 'the moment of a reading' }))
  if (!at.ok) return at
  const temperature = typed(readTemperature(cut[2] as string, { system }))
  return temperature.ok ? ok({ at: at.value, temperature: temperature.value }) : temperature
}
