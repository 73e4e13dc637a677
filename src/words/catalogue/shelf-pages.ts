import type { Celsius, Seconds } from '../../kernel/index.js'
import { capital } from '../counted.js'
import type { Writer } from '../writer.js'

const listed = (names: readonly string[]): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`
type Scale = { kind: string; low: Celsius; high: Celsius }
const scale = (p: Scale, w: Writer) => `${p.kind}, ${w.temperature(p.low)} to ${w.temperature(p.high)}`

/** Sentences of the pages about thermometers. */
export const shelfPagesWords = {
  'shelf.all-checked': (_: object) =>
    'Every thermometer here has been checked. Name the one you read with, and the time is corrected.',
  'shelf.some-unchecked': (p: { names: readonly string[] }) =>
    `${listed(p.names)} ${p.names.length === 1 ? 'has' : 'have'} never been checked.`,
  'shelf.never-checked': (_: object) => 'never checked',
  'shelf.scale': (p: Scale, w: Writer) => scale(p, w),
  'shelf.one': (p: Scale & { error: string }, w: Writer) => `${capital(p.error)}. ${capital(scale(p, w))}.`,
  'shelf.none': (_: object) => 'No thermometer is on the shelf yet.',
  'shelf.none.why': (p: { error: number }, w: Writer) =>
    `Half of them are off by ${w.difference(p.error)} or more, which moves a time by about five per cent; an error that is known costs nothing.`,
  'shelf.not-here': (_: object) => 'It may have been removed, or the link is an old one.',
  'shelf.new': (_: object) => 'The ends of its scale decide how it can be checked.',
  'shelf.missing': (_: object) => 'This is still empty.',
  'shelf.check': (p: { read: Celsius; true: Celsius }, w: Writer) =>
    `Read ${w.temperature(p.read)} where it was ${w.temperature(p.true)}.`,
  'shelf.check-kept': (p: { name: string }) => `The check of ${p.name} is kept.`,
  'shelf.withdrawn': (_: object) => 'The check is withdrawn; it stays on record and counts for nothing.',

  'shelf.method.comparison': (_: object) => 'A trusted thermometer beside it',
  'shelf.method.ice': (_: object) => 'Melting ice',
  'shelf.method.boiling': (_: object) => 'Boiling water',
  'shelf.method.entered': (_: object) => 'Known already, from its paper or from elsewhere',
  'shelf.how.comparison': (_: object, w: Writer) =>
    `Both in one beaker near ${w.temperature(20 as Celsius)}, bulbs side by side, stirred for a minute. Near ${w.temperature(38 as Celsius)} as well if you run colour.`,
  'shelf.how.ice': (_: object) =>
    'Crushed ice and a little water, stirred, the bulb in the middle and not against the wall; read it after three minutes.',
  'shelf.how.boiling': (_: object) =>
    'A rolling boil, the bulb in the steam just over the water or in it and off the bottom.',
  'shelf.how.entered': (_: object) => 'What it reads, and what is then true.',
  'shelf.boils-at': (p: { read: string; at: Celsius }, w: Writer) =>
    `read as ${p.read}; water boils there at ${w.temperature(p.at)}`,
  'shelf.effect-right': (p: { time: Seconds }, w: Writer) => `${w.time(p.time)} is right.`,
  'shelf.effect-fixed': (p: { read: Celsius; corrected: Celsius }, w: Writer) =>
    `At a reading of ${w.temperature(p.read)} the bath would have been ${w.temperature(p.corrected)}; this time is not moved, so the bath has to be.`,

  'class-set.lead': (_: object) =>
    'All in one beaker, stirred for a minute, then read one after the other. Those left empty were not in it.',
  'class-set.too-few': (_: object) => 'A comparison needs at least two thermometers on the shelf.',
  'class-set.trusted-hint': (_: object) => 'With none, the middle of all readings stands for the truth.',
  'class-set.trusted-unread': (p: { name: string }) =>
    `${p.name} is the trusted one but has no reading. Fill it in, or trust none.`,
  'class-set.truth': (p: { at: Celsius }, w: Writer) => `The beaker was at ${w.temperature(p.at)}`,
  'class-set.read': (p: { read: string }) => `read ${p.read}; kept as a check`,
} as const
