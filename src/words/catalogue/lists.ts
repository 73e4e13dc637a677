import type { Celsius, Seconds } from '../../kernel/index.js'
import { capital, counted, uncapital } from '../counted.js'
import type { Writer } from '../writer.js'

type Named = { name: string }
type Time = Seconds | number

/** Sentences about lists of baths: what each step is, on the page, in the form and on paper. */
export const listsWords = {
  'list.title': (p: Named) => `List of baths: ${p.name}`,
  'list.here': (p: { shipped: number; own: number }) =>
    p.own === 0
      ? `${capital(counted(p.shipped, 'list'))} by common practice. Copy one to make it your own.`
      : `${capital(counted(p.shipped, 'list'))} by common practice, ${counted(p.own, 'list')} of your own.`,
  'list.row': (p: { baths: number; least: Time; developing: boolean }, w: Writer) =>
    `${capital(counted(p.baths, 'bath'))}; ${w.time(p.least)} ${p.developing ? 'besides the developing time' : 'in all'}`,
  'list.shipped': (_: object) => 'It came with the program and stays as it is. Copy it, and the copy is yours.',
  'list.not-here': (_: object) => 'This list is not on the bench any more. Runs that were made by it keep their copy.',
  'list.copy': (_: object) => 'Give the copy a name of its own; everything else can be changed now or later.',
  'list.copy-name': (p: Named) => `${p.name}, mine`,
  'list.edit': (_: object) => 'Runs that are planned already keep the list as it was.',
  'list.moved': (p: Named & { place: number; of: number }) => `${p.name} is now step ${p.place} of ${p.of}.`,
  'list.taken-out': (p: Named) => `${p.name} is taken out.`,
  'list.added': (p: Named & { place: number; of: number }) => `${p.name} is step ${p.place} of ${p.of}.`,
  'list.put-back': (_: object) => 'The steps are as they were before.',
  'list.wrong': (p: { count: number }) =>
    `${capital(counted(p.count, 'thing'))} above ${p.count === 1 ? 'is' : 'are'} not right yet.`,

  'list.time.developing': (_: object) => 'As long as the developing time says.',
  'list.time.fixed': (p: { time: Time }, w: Writer) => `${w.time(p.time)}.`,
  'list.time.only': (p: Named & { time: Time }, w: Writer) =>
    `${w.time(p.time)}, and no other. The time of ${uncapital(p.name)} is not moved for warmth or cold: bring the bath to its temperature instead.`,
  'list.time.clearing': (p: { multiple: number; assumed: Time; least: Time; most: Time }, w: Writer) =>
    `${p.multiple === 2 ? 'Twice' : `${Number(p.multiple.toFixed(2))} times`} the time the film takes to clear, ${w.time(p.least)} at least. Until you have seen it clear, ${w.time(p.assumed)} is reckoned with. A bath that would need more than ${w.time(p.most)} is finished.`,
  'list.short.developing': (_: object) => 'developing time',
  'list.short.clearing': (p: { multiple: number }) =>
    p.multiple === 2 ? 'twice clearing' : `${Number(p.multiple.toFixed(2))} × clearing`,
  'list.short.act': (p: { within: number | null; takes: Time }, w: Writer) =>
    p.within === null ? `about ${w.span(p.takes)}` : `at ${w.time(p.within)} in the bath`,

  'list.turn.none': (_: object) => 'Not moved at all.',
  'list.turn.continuous': (_: object) => 'Turned without a stop.',
  'list.turn.rotary': (_: object) => 'Turned by a machine; no hands.',
  'list.turn.seconds': (p: { seconds: Time }, w: Writer) => `for ${w.span(p.seconds)}`,
  'list.turn.count': (p: { count: number; each: number }) =>
    `${counted(p.count, 'time')} (${Number(p.each.toFixed(2))}\u202fs each)`,
  'list.turn.opening': (p: { turn: string }) => `Turned ${p.turn} at the start`,
  'list.turn.still': (_: object) => 'then left standing.',
  'list.turn.then': (p: { turn: string; every: Time; first: Time | null }, w: Writer) =>
    `then ${p.turn} every ${p.every === 60 ? 'minute' : w.span(p.every)}${p.first === null ? '' : `, the first at ${w.time(p.first)}`}.`,
  'list.turn.every': (p: { turn: string; every: Time; first: Time | null }, w: Writer) =>
    `Turned ${p.turn} every ${p.every === 60 ? 'minute' : w.span(p.every)}${p.first === null ? '' : `, the first at ${w.time(p.first)}`}.`,
  'list.turn.moments': (p: { moments: readonly { at: Time; turn: string }[] }, w: Writer) =>
    `then ${p.moments.map(({ at, turn }) => `at ${w.time(at)} ${turn}`).join(', ')}.`,
  'list.turn.until': (p: { from: Time }, w: Writer) => `From ${w.time(p.from)} on without a stop.`,

  'list.window': (p: { from: Celsius; to: Celsius }, w: Writer) =>
    `${w.temperature(p.from)} to ${w.temperature(p.to)}; judged by this alone.`,
  'list.window.developer': (_: object) => 'What you read; the time follows it.',
  'list.window.none': (p: { said: number; refused: number }, w: Writer) =>
    `Near the developer’s: said from ${w.difference(p.said)} apart, refused from ${w.difference(p.refused)}.`,
  'list.clock.start-of-pour.start-of-drain': (_: object) =>
    'Counts from the first drop in to the moment draining begins.',
  'list.clock.start-of-pour.end-of-drain': (_: object) => 'Counts from the first drop in to the tank empty.',
  'list.clock.end-of-pour.start-of-drain': (_: object) => 'Counts from the tank full to the moment draining begins.',
  'list.clock.end-of-pour.end-of-drain': (_: object) => 'Counts from the tank full to the tank empty.',
  'list.change': (p: { pour: Time; drain: Time; cap: Time; tap: Time | null }, w: Writer) =>
    `Pour ${w.span(p.pour)}, drain ${w.span(p.drain)}, cap ${w.span(p.cap)}${p.tap === null ? '' : `, knock off bubbles ${w.span(p.tap)}`}.`,
  'list.goes.bottle': (_: object) => 'Back into its own bottle.',
  'list.goes.away': (_: object) => 'Down the drain.',
  'list.goes.waste-jug': (_: object) => 'Into the waste jug.',
  'list.stay': (p: { by: Time }, w: Writer) => `May stay ${w.span(p.by)} longer when hands are needed elsewhere.`,
  'list.stay.none': (_: object) => 'Not a second longer.',
  'list.next-at-once': (_: object) => 'The next bath follows at once.',
  'list.act.within': (p: { at: Time; takes: Time }, w: Writer) =>
    `${w.time(p.at)} after the bath before it began, while its clock goes on; takes about ${w.span(p.takes)}.`,
  'list.act.after': (p: { takes: Time }, w: Writer) =>
    `When the bath before it is out; takes about ${w.span(p.takes)}.`,

  'list.label.time': (_: object) => 'Time',
  'list.label.turn': (_: object) => 'Turning',
  'list.label.window': (_: object) => 'Warmth',
  'list.label.clock': (_: object) => 'Clock',
  'list.label.change': (_: object) => 'Change',
  'list.label.after': (_: object) => 'Afterwards',
  'list.label.when': (_: object) => 'When',
  'list.origin.measured': (_: object) => 'measured at this bench',
  'list.origin.sheet': (_: object) => 'a published sheet or manual',
  'list.origin.law': (_: object) => 'a published law',
  'list.origin.practice': (_: object) => 'common practice',
  'list.origin.assumption': (_: object) => 'an assumption until your records say better',
  'list.shared': (_: object) => 'Where a bath says nothing else',
  'list.marks': (_: object) => 'Where the figures come from',
  'list.mark': (p: { mark: string; origin: string }) => `${p.mark} ${p.origin}`,
} as const
