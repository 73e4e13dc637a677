import type { Celsius, Seconds } from '../../kernel/index.js'
import type { Writer } from '../writer.js'

type Tolerance = { in: 'percent' | 'contrast'; down: number; up: number }

/** What is kept of each film. */
export const filmsWords = {
  'films.lead': (p: { kept: number; count: number }) =>
    p.count === 0
      ? 'Every film of a developing time is listed here.'
      : `${p.count} ${p.count === 1 ? 'film' : 'films'}; something is kept of ${p.kept === p.count ? (p.count === 1 ? 'it' : 'all of them') : p.kept === 0 ? 'none of them' : p.kept}.`,
  'films.none': (_: object) => 'No film is known here yet.',
  'films.none.why': (_: object) =>
    'With its tolerance the bench knows which films share a tank, and with its drying time when it is dry.',
  'films.tolerance': (p: Tolerance) =>
    p.in === 'percent'
      ? `bears ${p.down} % less and ${p.up} % more time`
      : `bears ${p.down} less and ${p.up} more contrast`,
  'films.unkept': (_: object) => 'nothing kept: 10 % either way is assumed',
  'film.lead': (p: { kept: boolean }) =>
    p.kept ? 'What you know of this film. The bench reckons with it.' : 'Nothing is kept of this film yet.',
  'film.strips': (_: object) =>
    'Only for a tolerance in contrast. A line for each strip: time, contrast. Such as 6:00, 0.48',
  'film.percent': (_: object) => 'Per cent of its time, such as 10.',
  'film.contrast': (_: object) => 'Contrast, such as 0.05.',
  'film.drying': (_: object) => 'From hanging to dry, such as 2:30:00. Empty: as its last rolls did, else two hours.',
  'film.bad-drying': (_: object) => 'Between ten minutes and two days, such as 2:30:00.',
  'film.bad-tolerance': (_: object) => 'A number, 0 to 50 per cent or 0 to 0.5 of contrast.',
  'film.bad-strips': (p: { line: number; text: string }) =>
    `Line ${p.line}, “${p.text}”: write time and contrast, such as 6:00, 0.48`,
  'film.no-runs': (_: object) => 'It was in no run that has ended yet.',
  'film.no-times': (_: object) => 'No developing time is kept of it.',
  'film.run': (
    p: { developer: string; temperature: Celsius | null; time: Seconds | null; verdict: string },
    w: Writer,
  ) =>
    [
      p.developer,
      p.time === null ? '' : w.time(p.time),
      p.temperature === null ? '' : `at ${w.temperature(p.temperature)}`,
      p.verdict,
    ]
      .filter(Boolean)
      .join(', '),
  'film.best': (_: object) => 'This worked best.',
} as const
