import { type Celsius, readDuration, type Seconds, seconds, type UnitSystem } from '../../../kernel/index.js'
import type { SheetPoint } from '../../../science/index.js'
import { isClearTime, isNone, isRule, looksLikeTime } from './cells.js'
import { type Label, labelByRoles, type Role, readLabel, rolesOf } from './label.js'
import { type Column, type Line, lineOf, type Pair } from './line.js'

/** A cell that should be a time and is not. */
export interface BadCell {
  readonly cell: string
  readonly temperature: Celsius
}

/** One film in one developer at one index, as the paste has it. */
export interface Gathered {
  film: string
  developer: string
  dilution: readonly number[] | null
  index: number | null
  points: SheetPoint[]
}

/** What one line came to. */
export interface ReadLine {
  readonly number: number
  readonly text: string
  readonly heading: Line | null
  readonly label: Label
  /** The times of this line alone. */
  readonly points: readonly SheetPoint[]
  readonly bad: readonly BadCell[]
  readonly count: { readonly found: number; readonly wanted: number } | null
  readonly homeless: boolean
  /** `Agitation: …` and `Source: …`. */
  readonly said: { readonly what: 'agitation' | 'source'; readonly words: string } | null
  /** Which of the gathered times it went to. */
  readonly into: Gathered | null
}

/** Developing times of a film lie between these; a bare number is minutes. */
const TIMES = { low: seconds(5), high: seconds(6 * 3600) }

function timeIn(text: string): Seconds | null {
  const reading = readDuration(text, { what: 'a developing time', ...TIMES })
  return reading.kind === 'read' ? reading.value : null
}

function readPairs(pairs: readonly Pair[]): { points: SheetPoint[]; bad: BadCell[] } {
  const points: SheetPoint[] = []
  const bad: BadCell[] = []
  for (const { temperature, time } of pairs) {
    if (isNone(time)) continue
    const value = timeIn(time)
    if (value === null) bad.push({ cell: time, temperature })
    else points.push({ temperature, time: value })
  }
  return { points, bad }
}

/** Goes through a paste line by line; what stands above (film, heading, columns) holds until something replaces it. */
export class Gatherer {
  readonly gathered: Gathered[] = []
  agitation = ''
  source = ''
  private film = ''
  private developer = ''
  private dilution: readonly number[] | null = null
  private index: number | null = null
  private heading: readonly Celsius[] = []
  private columns: readonly Column[] = []
  private roles: readonly Role[] = []
  /** Times were read since the last name above rows. */
  private rows = false
  /** A line was left empty since the last times. */
  private gap = false

  constructor(private readonly system: UnitSystem) {}

  read(text: string, number: number): ReadLine {
    const nothing: ReadLine = {
      number,
      text,
      heading: null,
      label: {},
      points: [],
      bad: [],
      count: null,
      homeless: false,
      said: null,
      into: null,
    }
    if (text.trim() === '') this.gap = true
    if (text.trim() === '' || isRule(text)) return nothing
    const said = text.match(/^\s*(agitation|source|from)\s*:\s*(.+)$/i)
    if (said) return this.remark(nothing, said[1] as string, (said[2] as string).trim())
    const line = lineOf(text, { system: this.system, above: this.heading.length, columns: this.columns.length > 0 })
    switch (line.kind) {
      case 'words':
        return { ...nothing, heading: line, label: this.name(line.text) }
      case 'temperatures':
        return this.head(nothing, line)
      case 'columns':
        this.columns = line.columns
        this.heading = []
        return { ...nothing, heading: line }
      case 'pairs':
        return this.take({ ...nothing, label: this.rowLabel([line.label]) }, line.pairs)
      case 'cells':
        return this.cells(nothing, line.cells)
    }
  }

  private head(nothing: ReadLine, line: Extract<Line, { kind: 'temperatures' }>): ReadLine {
    this.heading = line.temperatures
    this.columns = []
    const roles = rolesOf(line.labels)
    this.roles = roles ?? []
    return { ...nothing, heading: line, label: roles === null ? this.name(line.labels.join(' ')) : {} }
  }

  private remark(nothing: ReadLine, what: string, words: string): ReadLine {
    if (/agitation/i.test(what)) this.agitation = words
    else this.source = words
    return { ...nothing, said: { what: /agitation/i.test(what) ? 'agitation' : 'source', words } }
  }

  /**
   * Words above the rows: they hold for every row below. Behind the rows of one film, after an empty line or
   * where the developer was named too, they name the next film, and nothing of the last one holds for it.
   */
  private name(text: string): Label {
    const next = this.rows && text !== '' && (this.gap || this.developer === '')
    const label = readLabel(text, this.film !== '' && !next)
    if (label.film !== undefined && label.film !== this.film) {
      this.film = label.film
      this.developer = ''
      this.dilution = null
      this.index = null
    }
    this.hold(label)
    if (label.index !== undefined) this.index = label.index
    if (label.film !== undefined || label.developer !== undefined) this.rows = false
    this.gap = false
    return label
  }

  /** What a film, a developer and a dilution are from here on. */
  private hold(label: Label): void {
    if (label.film !== undefined) this.film = label.film
    if (label.developer !== undefined) this.developer = label.developer
    if (label.dilution !== undefined) this.dilution = label.dilution
  }

  /** Words at the head of a row: a film or developer there holds from here on, an index for this row alone. */
  private rowLabel(cells: readonly string[]): Label {
    const said = cells.filter((cell) => !isNone(cell))
    const label =
      this.roles.length > 0 && cells.length === this.roles.length
        ? labelByRoles(cells, this.roles)
        : readLabel(said.join(' '), this.film !== '')
    this.hold(label)
    return label
  }

  private cells(nothing: ReadLine, cells: readonly string[]): ReadLine {
    if (this.heading.length > 0) return this.underHeading(nothing, cells)
    const pairs = this.byColumns(cells)
    return pairs === null ? { ...nothing, homeless: cells.some((cell) => /\d/.test(cell)) } : this.take(nothing, pairs)
  }

  /** A row under a line of temperatures. Too many or too few times are not spread over them by guess. */
  private underHeading(nothing: ReadLine, cells: readonly string[]): ReadLine {
    const wanted = this.heading.length
    const labels = Math.max(cells.length - wanted, isLabel(cells[0] ?? '') ? 1 : 0)
    const more = cells.slice(0, labels).findIndex(isClearTime)
    const label = this.rowLabel(cells.slice(0, more === -1 ? labels : more))
    const times = cells.slice(more === -1 ? labels : more)
    if (times.length !== wanted) return { ...nothing, label, count: { found: times.length, wanted } }
    return this.take(
      { ...nothing, label },
      times.map((time, i) => ({ time, temperature: this.heading[i] as Celsius })),
    )
  }

  /** Cells under headings such as “°F, min, °F, min”. Of two temperatures before a time the first counts. */
  private byColumns(cells: readonly string[]): Pair[] | null {
    if (this.columns.length === 0) return null
    const pairs: Pair[] = []
    let temperature: Celsius | null = null
    for (const [i, column] of this.columns.entries()) {
      const cell = cells[i]
      if (cell === undefined) break
      if (column.kind === 'temperature') temperature ??= degreesIn(cell, column.system)
      else if (temperature !== null) {
        pairs.push({ temperature, time: cell })
        temperature = null
      }
    }
    return pairs
  }

  private take(line: ReadLine, pairs: readonly Pair[]): ReadLine {
    const { points, bad } = readPairs(pairs)
    const into = this.place(line.label.index ?? this.index)
    into.points.push(...points)
    this.rows = true
    this.gap = false
    return { ...line, points, bad, into }
  }

  private place(index: number | null): Gathered {
    const same = (one: Gathered) =>
      one.film === this.film &&
      one.developer === this.developer &&
      one.index === index &&
      String(one.dilution) === String(this.dilution)
    const known = this.gathered.find(same)
    if (known) return known
    const fresh: Gathered = { film: this.film, developer: this.developer, dilution: this.dilution, index, points: [] }
    this.gathered.push(fresh)
    return fresh
  }
}

/** A first cell that is no time: words, or a whole number too high to be minutes, such as an index. */
const isLabel = (cell: string): boolean => !looksLikeTime(cell) || (/^\d{2,5}$/.test(cell) && timeIn(cell) === null)

/** A bare number in a column whose heading names the unit; `20 (68 °F)` counts as 20. */
function degreesIn(cell: string, system: UnitSystem): Celsius | null {
  const number = cell.match(/^[-−]?\d+(?:[.,]\d+)?/)?.[0]
  if (number === undefined) return null
  const value = Number(number.replace(',', '.').replace('−', '-'))
  const degrees = system === 'us' ? ((value - 32) * 5) / 9 : value
  return degrees > -50 && degrees < 120 ? (degrees as Celsius) : null
}
