import { type Celsius, readTemperature, type UnitSystem } from '../../../kernel/index.js'
import {
  cellsOf,
  firstUnit,
  isBareNumber,
  isClearTime,
  isNone,
  isTemperature,
  looksLikeTime,
  straightened,
  wordsOf,
} from './cells.js'

/** A temperature with the text that stands for its time. */
export interface Pair {
  readonly temperature: Celsius
  readonly time: string
}

export type Column = { readonly kind: 'temperature'; readonly system: UnitSystem } | { readonly kind: 'time' }

/** What a line of the paste is, before its times are read. */
export type Line =
  | {
      readonly kind: 'temperatures'
      /** The cells before the first temperature. */
      readonly labels: readonly string[]
      readonly temperatures: readonly Celsius[]
    }
  | { readonly kind: 'columns'; readonly columns: readonly Column[] }
  | { readonly kind: 'pairs'; readonly label: string; readonly pairs: readonly Pair[] }
  | { readonly kind: 'cells'; readonly cells: readonly string[] }
  | { readonly kind: 'words'; readonly text: string }

const celsiusOf = (cell: string, system: UnitSystem): Celsius | null => {
  const reading = readTemperature(firstUnit(cell), { system })
  return reading.kind === 'read' ? reading.value : null
}

/** `°C` or `Temperature in °F` → the unit system of a column. */
const columnSystem = (cell: string): UnitSystem | null =>
  /°?\s*\bC\b|°C|celsius/i.test(cell) ? 'metric' : /°?\s*\bF\b|°F|fahrenheit/i.test(cell) ? 'us' : null

const isTimeHeading = (cell: string): boolean => /\b(min|mins|minutes|time|times|m:ss)\b/i.test(cell)

function columnsOf(cells: readonly string[]): Line | null {
  if (cells.length < 2 || cells.some((cell) => /\d/.test(cell))) return null
  const columns: Column[] = []
  for (const cell of cells) {
    const system = columnSystem(cell)
    if (system !== null) columns.push({ kind: 'temperature', system })
    else if (isTimeHeading(cell)) columns.push({ kind: 'time' })
    else return null
  }
  return columns.some((c) => c.kind === 'time') && columns.some((c) => c.kind === 'temperature')
    ? { kind: 'columns', columns }
    : null
}

/** “Corvane 400  18C  20C  22C” or “°C  18  20  22”: a label, then only temperatures. */
function headingOf(cells: readonly string[], system: UnitSystem): Line | null {
  const first = cells.findIndex(isTemperature)
  if (first !== -1 && cells.slice(first).every(isTemperature))
    return temperaturesFrom(cells.slice(0, first), cells.slice(first), system)
  const [label, ...rest] = cells
  const unit = label === undefined ? null : columnSystem(label)
  if (unit === null || rest.length < 2 || !rest.every(isBareNumber)) return null
  return temperaturesFrom(
    [],
    rest.map((cell) => `${cell}${unit === 'us' ? 'F' : 'C'}`),
    unit,
  )
}

function temperaturesFrom(labels: readonly string[], cells: readonly string[], system: UnitSystem): Line | null {
  const temperatures = cells.map((cell) => celsiusOf(cell, system))
  return temperatures.every((one) => one !== null)
    ? { kind: 'temperatures', labels: labels.filter((cell) => !isNone(cell)), temperatures }
    : null
}

/** “Corvane 400, 20 °C 9:30, 24 °C 6:45”: temperatures, each with its time behind it. */
function pairsOf(words: readonly string[], { system, above }: Surroundings): Line | null {
  // A bare number before a clear time is a temperature only where no line of temperatures stands above.
  const bare = (i: number) => above === 0 && isBareNumber(words[i] ?? '') && isClearTime(words[i + 1] ?? '')
  const start = words.findIndex((word, i) => isTemperature(word) || bare(i))
  if (start === -1) return null
  const pairs: Pair[] = []
  let i = start
  while (i < words.length) {
    const temperature = celsiusOf(words[i] as string, system)
    if (temperature === null) return null
    // A second unit in its own cell, “20 °C  68 °F  9:30”, says the same again.
    const at = isTemperature(words[i + 1] ?? '') || /^\(.*\)$/.test(words[i + 1] ?? '') ? i + 2 : i + 1
    const time = words[at]
    if (time === undefined) return null
    const unit = words[at + 1]
    const spaced = unit !== undefined && /^(min|minutes|m|s|sec|seconds)\.?$/i.test(unit)
    pairs.push({ temperature, time: spaced ? `${time} ${unit}` : time })
    i = at + (spaced ? 2 : 1)
  }
  return { kind: 'pairs', label: words.slice(0, start).join(' '), pairs }
}

/** What stands above a line and decides what its numbers are. */
export interface Surroundings {
  /** The bench's units, for temperatures written without one. */
  readonly system: UnitSystem
  /** How many temperatures the heading above has; 0 when there is none. */
  readonly above: number
  /** Column headings stand above, so that a row is read by them. */
  readonly columns: boolean
}

/** Numbers at the end of the line that could be times. */
function trailingTimes(cells: readonly string[]): number {
  const fromEnd = [...cells].reverse().findIndex((cell) => !looksLikeTime(cell))
  return fromEnd === -1 ? cells.length : fromEnd
}

/** A row whose label stands apart by a wide gap while its times stand close together: cut at single spaces. */
function closeSet(cells: readonly string[], above: number): readonly string[] {
  const [label = '', ...rest] = cells
  const times = rest.flatMap(wordsOf)
  return rest.length < above && times.every(looksLikeTime) ? [label, ...times] : cells
}

/** Under a heading a row ends in times; without one, two numbers in a row are times that lack their heading. */
function rowOrWords(text: string, cells: readonly string[], above: number): Line {
  const needed = above === 0 ? 2 : Math.min(above, 2)
  return trailingTimes(cells) >= needed || !/\p{L}/u.test(text)
    ? { kind: 'cells', cells }
    : { kind: 'words', text: text.trim() }
}

/** Recognises one line. */
export function lineOf(written: string, around: Surroundings): Line {
  const text = straightened(written)
  const cells = cellsOf(text)
  const words = wordsOf(text)
  const columns = columnsOf(cells) ?? columnsOf(words)
  if (columns !== null) return columns
  if (around.columns && /^\d/.test(cells[0] ?? '')) return { kind: 'cells', cells }
  return (
    headingOf(cells, around.system) ??
    headingOf(words, around.system) ??
    pairsOf(cells, around) ??
    pairsOf(words, around) ??
    rowOrWords(text, closeSet(cells, around.above), around.above)
  )
}
