import type { Celsius, Seconds } from '../../kernel/index.js'
import type { Writer } from '../writer.js'

type Range = { from: Celsius; to: Celsius }
type At = { time: Seconds; temperature: Celsius }

/** Sentences about developing times. `w` writes the quantities in the bench's units. */
export const timesWords = {
  /** The answer, first words: what to do. Where nothing moves, nothing is compared. */
  'time.develop': (p: { time: Seconds }, w: Writer) => `Develop ${w.time(p.time)}`,
  'time.in-place-of': (p: At, w: Writer) => `in place of ${w.time(p.time)} at ${w.temperature(p.temperature)}`,
  'time.as-the-sheet-says': (_: object) => 'as the sheet says',
  'time.fixed': (p: { temperature: Celsius }, w: Writer) => `at ${w.temperature(p.temperature)}, and only there`,
  'time.band': (p: { bySheet: Seconds; byThermometer: Seconds; error: number }, w: Writer) =>
    `Give or take ${w.span(p.bySheet)} by the sheet and the law; ${w.difference(p.error)} of thermometer error is ${w.span(p.byThermometer)}.`,
  'time.band-fixed': (_: object) => 'One time at one temperature: the temperature is held, the time is not moved.',

  'time.warning.beyond-sheet': (p: Range & { by: number }, w: Writer) =>
    `${w.difference(p.by)} beyond the sheet, which covers ${range(p, w, 'to')}. The law goes on from its last time; treat it as a first try.`,
  'time.warning.beyond-single': (p: { by: number; from: Celsius }, w: Writer) =>
    `The sheet gives one time, at ${w.temperature(p.from)}; this is ${w.difference(p.by)} away from it, by the law alone.`,
  'time.warning.assumed-coefficient': (
    p: { value: number; low: number; high: number; shortest: Seconds; longest: Seconds },
    w: Writer,
  ) =>
    `How fast this developer answers to temperature is an assumption: ${p.value.toFixed(1)} times per ten degrees. Developers of its kind lie between ${p.low.toFixed(1)} and ${p.high.toFixed(1)}, which means ${w.time(p.shortest)} to ${w.time(p.longest)}. A second time from the sheet settles it.`,
  'time.warning.short-time': (p: { time: Seconds; limit: Seconds }, w: Writer) =>
    `Under ${w.time(p.limit)} development turns uneven. Cool the developer, or dilute it further by its sheet.`,
  'time.warning.outside-practice': (p: Range, w: Writer) =>
    `Hand development is usual between ${range(p, w)}. Colder, some agents nearly stop; warmer, gelatin softens.`,
  'time.warning.colour-cast-likely': (p: Range, w: Writer) =>
    `Outside ${range(p, w, 'to')} a colour cast is likely. The time is not moved; bring the developer to its temperature.`,
  'time.warning.single-bath-sheet-only': (_: object) =>
    'A single bath follows its own sheet only: cold slows its fixing more than its developing, so cold gives more development.',

  'time.working.reference': (p: At, w: Writer) =>
    `${w.time(p.time)} at ${w.temperature(p.temperature)} is where the sheet starts from`,
  'time.working.factor': (p: { factor: number; name: string }, w: Writer) => `× ${w.factor(p.factor)} for ${p.name}`,
  'time.working.result': (p: { time: Seconds }, w: Writer) => `= ${w.time(p.time)}`,
  'time.factor.temperature': (p: { temperature: Celsius }, w: Writer) => w.temperature(p.temperature),
  'time.factor.agitation': (_: object) => 'agitation',
  'time.factor.pre-wet': (_: object) => 'a pre-wet',
  'time.factor.repeat-use': (_: object) => 'repeat use of the bath',
  'time.factor.push-pull': (_: object) => 'push or pull',
  'time.factor.own-strips': (_: object) => 'your own strips',
  'time.factor.practised': (p: { name: string; low: number; high: number }) =>
    `${p.name}, ${p.low.toFixed(2)} to ${p.high.toFixed(2)} by practice`,
  'time.factor.other': (_: object) => 'your own factor',

  'time.law.exponential': (p: { coefficient: number }) =>
    `ten degrees warmer develops ${p.coefficient.toFixed(2)} times as fast (exponential law)`,
  'time.law.arrhenius': (p: { energy: number }) => `Arrhenius law with ${p.energy.toFixed(0)}${THIN}kJ/mol`,
  'time.law.fixed': (_: object) => 'no law: a colour or reversal first developer has one time at one temperature',
  'time.law.single-bath': (_: object) => 'no law: only the lines of its own sheet, and straight between them',
  'time.misfit': (p: { misfit: number; temperature: Celsius }, w: Writer) =>
    `The law misses the sheet’s own times by at most ${w.percent(p.misfit)}, at ${w.temperature(p.temperature)}.`,
  'time.origin.measured': (_: object) => 'measured here',
  'time.origin.sheet': (_: object) => 'the sheet',
  'time.origin.law': (_: object) => 'the law',
  'time.origin.practice': (_: object) => 'common practice',
  'time.origin.assumption': (_: object) => 'an assumption',
  'time.position.sheet-point': (_: object) => 'the sheet’s own time',
  'time.position.between': (_: object) => 'between times of the sheet',
  'time.position.beyond-cold': (_: object) => 'colder than the sheet',
  'time.position.beyond-warm': (_: object) => 'warmer than the sheet',
  'time.position.fixed': (_: object) => 'its one time',
} as const

const THIN = '\u202f'

/** `18.0 and 24.0 °C`: the unit once. */
function range(p: Range, w: Writer, join: 'and' | 'to' = 'and'): string {
  const [from, to] = [w.temperature(p.from), w.temperature(p.to)]
  return `${from.split(THIN)[0]} ${join} ${to}`
}
