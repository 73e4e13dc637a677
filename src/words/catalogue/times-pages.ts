import type { Celsius } from '../../kernel/index.js'
import { capital, counted } from '../counted.js'
import type { Writer } from '../writer.js'

const THIN = '\u202f'
type Kind = 'ordinary' | 'single-bath' | 'fixed'

/** `18.0 and 24.0 °C` with `between`, the unit once. */
const from = (low: Celsius, high: Celsius, w: Writer) =>
  low === high ? `at ${w.temperature(low)}` : `from ${w.temperature(low).split(THIN)[0]} to ${w.temperature(high)}`

/** Sentences of the pages that list, enter and paste developing times. */
export const timesPagesWords = {
  'times.here': (p: { times: number; films: number }) =>
    `${capital(counted(p.times, 'time'))} of ${counted(p.films, 'film')}. Choose one and say how warm the developer is.`,
  'times.found': (p: { count: number; wanted: string }) =>
    p.count === 0 ? `Nothing kept here matches “${p.wanted}”.` : `${capital(counted(p.count, 'time'))} found.`,
  'times.rests-on': (p: { count: number; from: Celsius; to: Celsius; words: string; kind: Kind }, w: Writer) =>
    [
      p.kind === 'fixed'
        ? `one time, only at ${w.temperature(p.from)}`
        : `${counted(p.count, 'time')} ${from(p.from, p.to, w)}`,
      ...(p.kind === 'single-bath' ? ['a single bath'] : []),
      ...(p.words === '' ? [] : [uncapital(p.words)]),
    ].join('; '),
  'times.none': (_: object) => 'No time is kept yet.',
  'times.none.how': (_: object) =>
    'On the developer’s sheet look for your film: a time, and the temperature it holds for. Two such pairs are better than one, a whole table is best.',
  'times.none.look': (_: object) => 'To see how it goes together first:',

  'times.form.new': (_: object) =>
    'Copy it from the sheet as it stands there. Only the film, the developer and one time have to be filled.',
  'times.form.edit': (_: object) => 'The old state stays on record; Undo goes back to it.',
  'times.form.points-hint': (_: object) => 'As many as the sheet gives, each with its temperature.',
  'times.form.kept': (p: { name: string }) => `${p.name} is kept.`,
  'times.form.corrected': (p: { name: string }) => `${p.name} is corrected.`,
  'times.form.wants': (p: { count: number }) =>
    p.count === 1
      ? 'One field above is not right yet; the sentence stands beside it.'
      : `${capital(counted(p.count, 'field'))} above are not right yet; the sentences stand beside them.`,
  'times.form.needed': (p: { what: string; example: string }) => `${p.what} is missing. Write it like ${p.example}.`,
  'times.form.whole': (p: { text: string }) =>
    `“${p.text}” is not an exposure index. Write a whole number such as 400.`,
  'times.form.both-ends': (p: { what: string }) => `${p.what} needs both ends, or neither.`,
  'times.form.point-half': (_: object) => 'A time belongs to a temperature: fill both, or clear both.',

  'times.paste.lead': (_: object) =>
    'From a sheet or a note of your own. Every line is read back in words before anything is kept.',
  'times.paste.nothing': (_: object) => 'Nothing is pasted yet.',
  'times.paste.no-times': (_: object) =>
    'No time was found in this text yet. A first line of temperatures and a line of times for each index is enough.',
  'times.paste.keep': (p: { count: number; left: readonly string[] }) =>
    `Keep ${counted(p.count, 'time')}${p.left.length === 0 ? '' : `, leave ${listed(p.left.map((cell) => `“${cell}”`))} out`}`,
  'times.paste.kept': (p: { count: number; records: number }) =>
    `${capital(counted(p.count, 'time'))} kept${p.records === 1 ? '' : ` in ${counted(p.records, 'record')}`}.`,
  'times.paste.missing': (p: { what: 'film' | 'developer' }) => `The text does not name the ${p.what}.`,
} as const

/** Within a sentence; a word that is all capitals keeps them. */
const uncapital = (text: string): string =>
  /^\p{Lu}\p{Ll}+ /u.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text

const listed = (parts: readonly string[]): string =>
  parts.length < 3
    ? parts.join(' and ')
    : parts.length > 4
      ? `${parts.slice(0, 3).join(', ')} and ${parts.length - 3} more`
      : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`
