import type { Seconds } from '../../kernel/index.js'
import type { Writer } from '../writer.js'

type Found = {
  number: string
  film: string
  format: string
  whose: string | null
  index: number | null
  pushed: boolean
}

type OnReel = {
  film: string
  exposure_index: number | null
  label: string
  reel?: number | undefined
  roll?: { number: string } | undefined
}

const nameOf = ({ film, exposure_index, label, roll }: OnReel): string =>
  [roll?.number ?? '', film, exposure_index === null ? '' : `at ${exposure_index}`, label === '' ? '' : `(${label})`]
    .filter(Boolean)
    .join(' ')

const percent = (part: number): string => `${(Math.abs(part) * 100).toFixed(1)} %`

/** Rolls of the register in a plan and in the record of a run. */
export const runRollsWords = {
  'plan.rolls.find': (_: object) => 'A word of it, its number, or the code from its sticker.',
  'plan.rolls.roll': (p: Found) =>
    [
      `${p.number} ${p.film}`,
      p.index === null ? '' : `${p.pushed ? 'developed as' : 'at'} ${p.index}`,
      p.format,
      p.whose ?? '',
    ]
      .filter(Boolean)
      .join(', '),
  'plan.rolls.found': (p: { count: number; wanted: string }) =>
    p.count === 0
      ? `No roll that waits has “${p.wanted}” in it.`
      : p.count === 1
        ? 'One roll waits. Enter takes it.'
        : `${p.count} rolls wait.`,
  'plan.rolls.wants': (_: object) => 'No kept time says it. Such as 9:30.',
  'plan.rolls.other-time': (p: { time: string; film: string; index: number | null }) =>
    `The developing time is ${p.time}, and the roll is ${p.film}${p.index === null ? '' : ` at ${p.index}`}. Is that meant?`,
  'plan.rolls.confirm.carbon-backing': (_: object) =>
    'The black backing is softened and rinsed off before the developer',
  'plan.rolls.confirm.infrared': (_: object) => 'This tank lets no infrared through, and I load in full darkness',
  'plan.mixed.missing': (_: object) => 'These rolls want different times, and not all of them are known.',
  'run.departs': (p: { film: string; wants: number; departs: number }, w: Writer) => {
    const wanted = w.time(p.wants as Seconds)
    return Math.abs(p.departs) < 0.0005
      ? `${p.film} wants ${wanted} and gets it.`
      : `${p.film} wants ${wanted} and gets ${percent(p.departs)} ${p.departs > 0 ? 'more' : 'less'}.`
  },
  'record.crosses': (p: { because: string }) => `Another process on purpose: ${p.because}`,
  'record.rolls': (_: object) => 'On the reels',
  'run.on-reels': (p: { films: readonly OnReel[] }) => {
    const reels = [...new Set(p.films.map(({ reel }) => reel))]
    const on = (reel: number | undefined) => p.films.filter((film) => film.reel === reel).map(nameOf)
    if (reels.every((reel) => reel === undefined)) return on(undefined).join(', ')
    const several = reels.map((reel) => {
      const films = on(reel)
      const named = reel === undefined ? '' : `Reel ${reel}: `
      return `${named}${films.join(', then ')}${films.length > 1 ? ' (from the middle outwards)' : ''}`
    })
    return several.join('. ')
  },
} as const
