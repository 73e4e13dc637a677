import type { Seconds } from '../../kernel/index.js'
import type { Writer } from '../writer.js'

/** What people say of their negatives, what a run is called, and the turns of a bath in one line. */
export const runsWords = {
  'score.turns': (p: { name: string; length: Seconds; count: number; last: Seconds }, w: Writer) =>
    p.count === 1
      ? `${p.name}: turn for ${w.span(p.length)}`
      : `${p.name}: turn for ${w.span(p.length)}, ${p.count} times, the last at ${w.time(p.last)}`,
  'run.title': (p: { films: string; recipe: string }) => (p.films === '' ? p.recipe : `${p.films}: ${p.recipe}`),
  'run.verdict': (p: { tank: string; said: string; note: string }) =>
    [`${p.tank}: ${p.said === '' ? 'no verdict' : p.said}.`, p.note].filter(Boolean).join(' '),
  'run.verdict.thin': (_: object) => 'thin',
  'run.verdict.right': (_: object) => 'right',
  'run.verdict.dense': (_: object) => 'dense',
  'run.mark.uneven': (_: object) => 'uneven',
  'run.mark.streaks': (_: object) => 'streaks',
  'run.mark.bubbles': (_: object) => 'bubble marks',
  'run.mark.half-moons': (_: object) => 'half-moon kinks',
  'run.mark.scratches': (_: object) => 'scratches',
  'run.mark.drying-marks': (_: object) => 'drying marks',
  'run.mark.fogged': (_: object) => 'fogged',
  'run.mark.milky': (_: object) => 'milky',
} as const
