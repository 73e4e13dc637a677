import type { Celsius, Seconds } from '../../kernel/index.js'
import type { Writer } from '../writer.js'

/** Sentences about development summed over changing temperature. */
export const doseWords = {
  'dose.sum': (
    p: { actual: Seconds; equivalent: Seconds; reference: { time: Seconds; temperature: Celsius }; fraction: number },
    w: Writer,
  ) =>
    `${w.time(p.actual)} in the developer did as much as ${w.time(p.equivalent)} at ${w.temperature(p.reference.temperature)}: ${w.percent(p.fraction)} of ${w.time(p.reference.time)}.`,
  'dose.stretch': (p: { from: Seconds; to: Seconds; cool: Celsius; warm: Celsius; equivalent: Seconds }, w: Writer) =>
    `${w.time(p.from)} to ${w.time(p.to)}, ${w.temperature(p.cool)} to ${w.temperature(p.warm)}: ${w.span(p.equivalent)}`,
  'dose.mean-rate': (p: { rate: number }) =>
    `Mean rate ${p.rate.toFixed(4)}, summed moment by moment: warm minutes gain more than cold ones lose.`,
  'dose.total': (p: { equivalent: Seconds }, w: Writer) => `= ${w.span(p.equivalent)}`,
  'dose.source.readings': (_: object) => 'the readings, straight between them; the rate summed by Gauss–Legendre',
  'dose.source.total': (_: object) => 'all of it added',
  'dose.source.mean-rate': (_: object) => 'that over the time it took',
} as const
