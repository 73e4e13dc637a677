import type { Seconds } from '../../kernel/index.js'
import { capital, counted } from '../counted.js'
import type { Writer } from '../writer.js'

/** Sentences that only the pages say: about the page, the device, the bench as a whole. */
export const webWords = {
  'web.not-paired': (_: object) => 'The bench answers only to the computer it runs on and to phones paired with it.',
  'web.nowhere': (p: { path: string }) => `There is no page at ${p.path}. It may have been an old link.`,
  'web.page-fault': (_: object) =>
    'That is a fault of the program, not of anything you entered. What you typed is kept.',
  'web.offline': (_: object) =>
    'The bench does not answer just now. What stands here may be old; nothing can be saved until it is back.',
  'web.demo': (_: object) => 'This is the demo bench, all invented.',
  'web.demo-removed': (_: object) => 'The demo bench is gone; this is your own.',

  'today.bare': (_: object) => 'The bench is bare.',
  'today.here': (p: { times: number; films: number; thermometers: number }) =>
    `${capital(counted(p.times, 'time'))} of ${counted(p.films, 'film')} and ${counted(p.thermometers, 'thermometer')} are here.`,
  'today.table': (_: object) => 'Is a whole table in front of you?',
  'today.demo': (_: object) =>
    'Rather look first? The demo bench has a few films, their times and three thermometers, all invented.',

  'web.no-time': (_: object) => 'No time for this yet',
  'web.one-point': (_: object) => 'The sheet gives one time here.',
  'web.no-thermometer': (_: object) => 'No thermometer is on the shelf, so half a degree of error is assumed.',
  'web.factor-hint': (_: object) => 'Such as 1.10 for a second use of the bath. Empty is none.',
  'web.factor-own': (_: object) =>
    'Entered on this page. It multiplies the whole time and stands in the address, not on the record.',
  'web.band-parts': (p: { bySheet: Seconds; byThermometer: Seconds; error: number }, w: Writer) =>
    `Half of the last step that the sheet prints, and the spread of the law away from its times, come to ${w.span(p.bySheet)}. A thermometer off by ${w.difference(p.error)} moves the time by ${w.span(p.byThermometer)}.`,
  'web.source': (p: { words: string; origin: 'sheet' | 'own-note' | 'measured'; count: number }) =>
    `${capital(p.words === '' ? SOURCES[p.origin] : p.words)}: ${counted(p.count, 'time')}.`,
  'web.point-misfit': (p: { misfit: number }, w: Writer) =>
    Math.abs(p.misfit) < 0.0005
      ? 'on the law'
      : `${w.percent(p.misfit)} ${p.misfit > 0 ? 'longer' : 'shorter'} than the law`,
  'web.coefficient.law': (p: { value: number; low: number; high: number }) =>
    `The number is laid through the sheet’s own times: ${p.value.toFixed(2)}, and between ${p.low.toFixed(2)} and ${p.high.toFixed(2)} by how they scatter.`,
  'web.coefficient.sheet': (p: { value: number; low: number; high: number }) =>
    `The number is the developer’s own, as entered: ${p.value.toFixed(2)}.`,
  'web.coefficient.assumption': (p: { value: number; low: number; high: number }) =>
    `The number is assumed for this kind of developer: ${p.value.toFixed(2)}, somewhere from ${p.low.toFixed(2)} to ${p.high.toFixed(2)}.`,
  'web.law-kept': (p: { name: string; law: 'exponential' | 'arrhenius' }) =>
    `${p.name} now goes by the ${p.law === 'arrhenius' ? 'Arrhenius' : 'exponential'} law.`,
  'web.undone': (p: { name: string }) => `${p.name} is as it was before.`,
  'web.removed': (p: { name: string }) => `${p.name} is removed.`,
  'web.brought-back': (p: { name: string }) => `${p.name} is back.`,
  'web.was-removed': (_: object) => 'This was removed. It is kept on record and can come back.',
} as const

const SOURCES = { sheet: 'from a sheet', 'own-note': 'from an own note', measured: 'measured here' } as const
