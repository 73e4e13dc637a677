import { type Celsius, failed, ok, problem, type Result, type Seconds, sentenceIn } from '../../../kernel/index.js'
import { defineBasis, fitLaw } from '../../../science/index.js'
import type { PastedReading, TimeStatement } from '../../../wire/index.js'
import { say, type Writer } from '../../../words/index.js'
import { type BadCell, type Gathered, Gatherer, type ReadLine } from './gather.js'

const MOST_CHARACTERS = 20_000
const ROUNDED_TO_S = 15
/** Control characters, which no screen shows and nothing kept may hold; the tab parts cells. */
const UNSEEN = /(?!\t)\p{Cc}/gu

/**
 * Reads a table of developing times as people paste it: a line of temperatures and a line for each index, or a
 * temperature with its time on each line, or columns with headings; °C or °F; dashes where there is none.
 * Nothing is guessed: a cell that is no time is named, with what the other times make likely. Keeps nothing.
 */
export function readTable(text: string, writer: Writer): Result<PastedReading> {
  if (text.length > MOST_CHARACTERS)
    return failed(problem('times.table-too-long', { length: text.length, most: MOST_CHARACTERS }))
  const gatherer = new Gatherer(writer.units)
  const lines = text.split(/\r\n|\r|\n/).map((line, i) => gatherer.read(line.replace(UNSEEN, ' '), i + 1))
  const times = gatherer.gathered.filter((one) => one.points.length > 0)
  const troubled = lines.some((line) => line.bad.length > 0 || line.count !== null || line.homeless)
  if (times.length === 0 && !troubled) return failed(problem('times.table-empty'))
  const faults = faultsOf(times, writer)
  const shown = lines.filter((line) => line.text.trim() !== '')
  return ok({
    lines: shown.map((line) => ({
      number: line.number,
      text: line.text,
      read_as: readAs(line, writer),
      trouble: [...troubleOf(line, writer), ...lastLineFault(line, lines, faults)],
    })),
    times: times.map((one) => statement(one, gatherer)),
    count: times.reduce((sum, one) => sum + one.points.length, 0),
  })
}

type Trouble = { cell: string; sentence: string }

/** What is wrong with a whole film's times (slower when warmer, two at one temperature). */
function faultsOf(times: readonly Gathered[], w: Writer): Map<Gathered, Trouble> {
  const faults = new Map<Gathered, Trouble>()
  for (const one of times) {
    const basis = defineBasis({ kind: 'ordinary', points: one.points })
    if (!basis.ok) faults.set(one, { cell: '', sentence: sentenceIn(basis.problem, w.units) })
  }
  return faults
}

/** Such a fault is shown once, at the last line that went into it. */
function lastLineFault(line: ReadLine, lines: readonly ReadLine[], faults: Map<Gathered, Trouble>): Trouble[] {
  const fault = line.into && faults.get(line.into)
  const last = lines.filter((other) => other.into === line.into).at(-1)
  return fault && last === line ? [fault] : []
}

function readAs(line: ReadLine, w: Writer): string | null {
  if (line.said?.what === 'agitation') return say('paste.agitation', { agitation: line.said.words }, w)
  if (line.said?.what === 'source') return say('paste.source', { source: line.said.words }, w)
  const names = [
    ...(line.label.film === undefined ? [] : [say('paste.film', { film: line.label.film }, w)]),
    ...(line.label.developer === undefined ? [] : [say('paste.developer', { developer: line.label.developer }, w)]),
  ]
  const parts = [
    ...names,
    ...dilutionWords(line, w),
    ...(line.heading ? headingWords(line.heading, w) : []),
    ...rowWords(line, w),
  ]
  return parts.length > 0 ? parts.join(' ') : null
}

function headingWords(heading: NonNullable<ReadLine['heading']>, w: Writer): string[] {
  if (heading.kind === 'temperatures') return [say('paste.heading', { temperatures: heading.temperatures }, w)]
  return heading.kind === 'columns' ? [say('paste.columns', {}, w)] : []
}

/** A dilution, and above the rows an index; in a row the index is said with its times. */
function dilutionWords({ label, points }: ReadLine, w: Writer): string[] {
  const { dilution, index } = label
  return [
    ...(dilution === undefined ? [] : [say('paste.dilution', { parts: dilution }, w)]),
    ...(index === undefined || points.length > 0 ? [] : [say('paste.index', { index }, w)]),
  ]
}

function rowWords(line: ReadLine, w: Writer): string[] {
  if (line.points.length === 0) return []
  const row = say('paste.row', { index: line.label.index ?? line.into?.index ?? null, points: line.points }, w)
  const basis = line.points.length > 2 ? defineBasis({ kind: 'ordinary', points: line.points }) : null
  if (!basis?.ok) return [row]
  return [row, say('paste.within-law', { misfit: Math.abs(fitLaw(basis.value, 'exponential').worst.misfit) }, w)]
}

function troubleOf(line: ReadLine, w: Writer): Trouble[] {
  const cells = line.bad.map((bad) => ({
    cell: bad.cell,
    sentence: say('paste.not-a-time', { ...bad, near: near(bad, line) }, w),
  }))
  return [
    ...cells,
    ...(line.count ? [{ cell: '', sentence: say('paste.wrong-count', line.count, w) }] : []),
    ...(line.homeless ? [{ cell: '', sentence: say('paste.no-heading', {}, w) }] : []),
    ...(line.label.ambiguous === undefined
      ? []
      : [{ cell: line.label.ambiguous, sentence: say('paste.ambiguous-ratio', { ratio: line.label.ambiguous }, w) }]),
  ]
}

/** Where the other times of the same film put a cell that could not be read. */
function near(bad: BadCell, line: ReadLine): Seconds | null {
  const points = line.into?.points ?? []
  const basis = points.length > 1 ? defineBasis({ kind: 'ordinary', points }) : null
  if (!basis?.ok) return null
  const time = fitLaw(basis.value, 'exponential').timeAt(bad.temperature as Celsius)
  return (Math.round(time / ROUNDED_TO_S) * ROUNDED_TO_S) as Seconds
}

const statement = (one: Gathered, gatherer: Gatherer): TimeStatement => ({
  film: one.film.slice(0, 120),
  exposure_index: one.index,
  developer: one.developer.slice(0, 120),
  dilution_parts: one.dilution === null ? null : [...one.dilution],
  agitation: gatherer.agitation.slice(0, 200),
  kind: 'ordinary',
  law: 'exponential',
  developer_class: 'unknown',
  coefficient: null,
  usable: null,
  window: null,
  points: one.points.map((point) => ({ temperature_c: point.temperature, time_s: point.time })),
  source_words: gatherer.source.slice(0, 500),
  source_origin: 'sheet',
  note: '',
})
