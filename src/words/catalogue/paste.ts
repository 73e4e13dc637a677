import { type Celsius, type Seconds, writeRatio } from '../../kernel/index.js'
import type { Writer } from '../writer.js'

const THIN = '\u202f'
const listed = (items: readonly string[]): string =>
  items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')} and ${items[items.length - 1]}`

/** `18, 20 and 22 °C`: the unit once, whole degrees without a decimal when all are whole. */
function temperatures(values: readonly Celsius[], w: Writer): string {
  const written = values.map((value) => w.temperature(value))
  const whole = written.every((text) => text.includes(`.0${THIN}`))
  const bare = written.map((text) => (text.split(THIN)[0] as string).replace(whole ? /\.0$/ : /$^/, ''))
  return `${listed(bare)}${THIN}${w.units === 'us' ? '°F' : '°C'}`
}

/** How a pasted table was read. */
export const pasteWords = {
  'paste.row': (p: { index: number | null; points: readonly { time: Seconds; temperature: Celsius }[] }, w: Writer) =>
    `${p.index === null ? '' : `At ${p.index}: `}${listed(p.points.map((point) => w.time(point.time)))} at ${temperatures(
      p.points.map((point) => point.temperature),
      w,
    )}.`,
  'paste.within-law': (p: { misfit: number }, w: Writer) => `Within ${w.percent(Math.max(p.misfit, 0.01))} of the law.`,
  'paste.heading': (p: { temperatures: readonly Celsius[] }, w: Writer) =>
    `Temperatures: ${temperatures(p.temperatures, w)}.`,
  'paste.columns': (_: object) => 'Columns of temperatures and times.',
  'paste.film': (p: { film: string }) => `The film: ${p.film}.`,
  'paste.developer': (p: { developer: string }) => `The developer: ${p.developer}.`,
  'paste.dilution': (p: { parts: readonly number[] }) =>
    p.parts.length === 1 ? 'Undiluted.' : `Diluted ${writeRatio({ parts: p.parts })}.`,
  'paste.index': (p: { index: number }) => `Exposed at ${p.index}.`,
  'paste.agitation': (p: { agitation: string }) => `Agitation: ${p.agitation}.`,
  'paste.source': (p: { source: string }) => `The source: ${p.source}.`,
  'paste.not-a-time': (p: { cell: string; temperature: Celsius; near: Seconds | null }, w: Writer) =>
    `“${p.cell}” at ${w.temperature(p.temperature)} is not a time. ${
      p.near === null
        ? 'Write it like 9:30, 9.5 or 9½.'
        : `The other times put it near ${w.time(p.near)}; write it like ${w.time(p.near)}.`
    }`,
  'paste.wrong-count': (p: { found: number; wanted: number }) =>
    `${p.found} ${p.found === 1 ? 'time' : 'times'} for ${p.wanted} temperatures. Put a dash where the sheet gives none.`,
  'paste.no-heading': (_: object) =>
    'Numbers without a temperature. Put a line of temperatures above, such as “18C 20C 22C”.',
  'paste.ambiguous-ratio': (p: { ratio: string }) =>
    `“${p.ratio}” has two readings, so it is left out. Write the dilution with a plus, such as 1 + 4.`,
} as const
