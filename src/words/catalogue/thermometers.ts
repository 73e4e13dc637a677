import type { Celsius, Seconds } from '../../kernel/index.js'
import type { Writer } from '../writer.js'

/** Sentences about thermometers. */
export const thermometerWords = {
  'thermometer.corrected': (p: { name: string; read: Celsius; corrected: Celsius }, w: Writer) =>
    `${p.name} reads ${w.temperature(p.read)}; the bath is ${w.temperature(p.corrected)}.`,
  'thermometer.true': (p: { name: string }) => `${p.name} reads true where it was checked.`,
  'thermometer.unchecked': (p: { name: string; error: number }, w: Writer) =>
    `${p.name} has not been checked. Half of such thermometers are off by ${w.difference(p.error)} or more; compare it with a trusted one at 20${THIN}°C.`,
  'thermometer.offset': (p: { offset: number; at: Celsius }, w: Writer) =>
    Math.abs(p.offset) < 0.05
      ? `true at ${w.temperature(p.at)}`
      : `${w.difference(p.offset)} ${p.offset > 0 ? 'high' : 'low'} at ${w.temperature(p.at)}`,
  'thermometer.effect': (p: { uncorrected: Seconds; corrected: Seconds; fraction: number }, w: Writer) =>
    `Taken at its word the time would have been ${w.time(p.uncorrected)}: ${w.percent(p.fraction)} ${p.fraction < 0 ? 'too short' : 'too long'}.`,
  'thermometer.no-effect': (_: object) => 'The error makes no difference that a clock would show.',
  'thermometer.says-nothing-near': (p: { near: Celsius }, w: Writer) =>
    `This check says nothing about ${w.temperature(p.near)} by itself; compare it there as well.`,
  'thermometer.held-beyond': (_: object) =>
    'Beyond the checked temperatures the nearest correction is held; it is less sure there.',
  'thermometer.bursts': (_: object) =>
    'A spirit thermometer that ends at 50 °C bursts in hotter water. Never put it in a kettle or a hot mix.',
  'thermometer.hot-water-caution': (_: object) =>
    'Boiling water scalds: stand the thermometer in a rack and keep hands and children away.',
  'thermometer.check-line': (p: { read: Celsius; truth: Celsius }, w: Writer) =>
    `It read ${w.temperature(p.read)} where ${w.temperature(p.truth)} was true.`,
  'thermometer.correction-line': (p: { correction: number; band: number }, w: Writer) =>
    `So ${p.correction < 0 ? 'take off' : 'add'} ${w.difference(Math.abs(p.correction))}; give or take ${w.difference(p.band)}.`,
  'thermometer.source.entered': (p: { band: number }, w: Writer) =>
    `your check; good to ${w.difference(p.band)}, assumed`,
  'thermometer.source.comparison': (p: { band: number }, w: Writer) =>
    `compared with a trusted one; good to ${w.difference(p.band)}, assumed`,
  'thermometer.source.ice': (p: { band: number }, w: Writer) => `melting ice; good to ${w.difference(p.band)}, assumed`,
  'thermometer.source.boiling': (p: { band: number }, w: Writer) =>
    `boiling water (IAPWS-IF97); good to ${w.difference(p.band)}, assumed`,
  'thermometer.source.unchecked': (_: object) => 'no check speaks for this reading: half a degree is assumed',
  'thermometer.source.one-check': (_: object) => 'the same offset everywhere; less sure away from it, assumed',
  'thermometer.source.between': (_: object) => 'straight between two checks',
  'thermometer.source.beyond': (_: object) => 'the nearest offset held; less sure away from it, assumed',
  'thermometer.set-by-median': (p: { spread: number }, w: Writer) =>
    `No trusted thermometer among them, so their median stands for the truth; they spread over ${w.difference(p.spread)}.`,
  'thermometer.set-by-trusted': (p: { name: string }) =>
    `Compared with ${p.name}, put right by its own checks and taken as true.`,
} as const

const THIN = '\u202f'
