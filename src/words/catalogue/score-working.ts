import type { Seconds } from '../../kernel/index.js'
import type { Writer } from '../writer.js'

/** How a score came about, line by line; the run screen never says these. */
export const scoreWorkingWords = {
  'score.working.bath': (p: { name: string; time: Seconds }, w: Writer) => `${p.name}: ${w.time(p.time)} on its clock`,
  'score.working.clearing': (p: { name: string; multiple: number; clearing: Seconds; time: Seconds }, w: Writer) =>
    `${p.name}: ${p.multiple} × ${w.time(p.clearing)} of clearing, ${w.time(p.time)} on its clock`,
  'score.working.act': (p: { name: string; time: Seconds }, w: Writer) => `${p.name}: ${w.span(p.time)}`,
  'score.working.pour': (p: { time: Seconds }, w: Writer) => `Pouring in: ${w.span(p.time)}`,
  'score.working.drain': (p: { time: Seconds }, w: Writer) => `Pouring out: ${w.span(p.time)}`,
  'score.working.cap': (p: { time: Seconds }, w: Writer) => `Cap and funnel: ${w.span(p.time)}`,
  'score.working.tap': (p: { time: Seconds }, w: Writer) => `Tapping off bubbles: ${w.span(p.time)}`,
  'score.source.own': (_: object) => 'your own figure',
  'score.source.basis': (_: object) => 'the times stated, at the temperature asked for',
  'score.source.none': (_: object) => 'no time stated',
} as const
