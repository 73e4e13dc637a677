import type { Celsius, Seconds } from '../../kernel/index.js'
import type { Writer } from '../writer.js'

type Range = { from: Celsius; to: Celsius }
type At = { time: Seconds; temperature: Celsius }

const THIN = '\u202f'

/** `18.0 to 24.0 °C`: the unit once. */
const range = (p: Range, w: Writer): string => `${w.temperature(p.from).split(THIN)[0]} to ${w.temperature(p.to)}`

/** Words of the graph of times, on screen and on paper. */
export const graphWords = {
  'graph.title': (p: { film: string }) => `Developing time of ${p.film} against temperature`,
  'graph.points': (p: { count: number } & Range, w: Writer) =>
    p.count === 1
      ? `One time from the sheet, at ${w.temperature(p.from)}.`
      : `${p.count} times from the sheet, from ${w.temperature(p.from)} to ${w.temperature(p.to)}.`,
  'graph.runs': (p: { cold: At; warm: At }, w: Writer) =>
    `The line runs from ${w.time(p.cold.time)} at ${w.temperature(p.cold.temperature)} to ${w.time(p.warm.time)} at ${w.temperature(p.warm.temperature)}.`,
  'graph.asked': (p: At, w: Writer) => `Marked: ${w.time(p.time)} at ${w.temperature(p.temperature)}.`,
  'graph.sheet': (p: Range, w: Writer) => `the sheet: ${range(p, w)}`,
  'graph.sheet-one': (p: { at: Celsius }, w: Writer) => `the sheet: ${w.temperature(p.at)} only`,
  'graph.window': (p: Range, w: Writer) => `keep within ${range(p, w)}`,
  'graph.beyond': (_: object) => 'beyond the sheet',
  'graph.doubt': (_: object) => 'give or take',
  'graph.reference': (p: { time: Seconds }, w: Writer) => `${w.time(p.time)} on the sheet`,
  'graph.caption': (_: object) => 'time on a log scale; bath held steady',
  'graph.caption-fixed': (_: object) => 'one time, at one temperature',
} as const

/** Words of the time card that is pinned over the sink. */
export const cardWords = {
  'card.title': (p: { film: string; developer: string }) => `Time card: ${p.film} in ${p.developer}`,
  'card.film': (p: { film: string; exposureIndex: number | null }) =>
    p.exposureIndex === null ? p.film : `${p.film}, exposed at\u00a0${p.exposureIndex}`,
  'card.developer': (p: { developer: string; dilution: string | null; agitation: string }) =>
    [[p.developer, p.dilution].filter(Boolean).join(' '), p.agitation].filter(Boolean).join('; '),
  'card.at': (p: { temperature: Celsius; rest: string }, w: Writer) => `at ${w.temperature(p.temperature)}, ${p.rest}`,
  'card.column.temperature': (_: object) => 'Developer',
  'card.column.time': (_: object) => 'Time',
  'card.column.origin': (_: object) => 'Rests on',
  'card.row.sheet': (_: object) => 'sheet',
  'card.row.law': (_: object) => 'law',
  'card.row.between': (_: object) => 'between two',
  'card.row.beyond': (_: object) => 'law, beyond',
  'card.behind': (_: object) => 'Behind the number',
  'card.source': (p: { words: string }) => (p.words === '' ? 'Typed in without naming the sheet.' : sentence(p.words)),
  'card.law': (p: { law: string }) => sentence(p.law),
  'card.working': (p: { start: Seconds; steps: readonly string[]; time: Seconds }, w: Writer) =>
    `${w.time(p.start)} ${p.steps.join(' ')} = ${w.time(p.time)}.`,
  'card.modified': (_: object) => 'The table carries the same factors; the graph shows the sheet without them.',
  'card.care': (_: object) => 'Take care',
  'card.notes': (_: object) => 'Notes',
  'card.foot': (p: { saved: string; printed: string }) => `Entered ${p.saved}, printed ${p.printed}.`,
} as const

/** With a capital and a full stop, whatever was typed. */
function sentence(text: string): string {
  const trimmed = text.trim()
  const [first = '', ...rest] = [...trimmed]
  return `${first.toUpperCase()}${rest.join('')}${/[.!?…]$/u.test(trimmed) ? '' : '.'}`
}
