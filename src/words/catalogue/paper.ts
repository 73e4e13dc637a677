import { counted, uncapital } from '../counted.js'

type Named = { name: string }

/** Runs that were done on paper: what their record says, and the form in which they are typed in. */
export const paperWords = {
  'run.deviation.not-written': (p: { names: readonly string[] }) =>
    `Nobody wrote down when ${p.names.length === 1 ? 'this was' : 'these were'} done, so the plan’s moments stand: ${p.names.join(', ')}.`,
  'run.deviation.development-assumed': (p: Named & { side: 'in' | 'out' | 'both' }) =>
    `Nobody wrote down when ${uncapital(p.name)} was poured ${p.side === 'both' ? 'in or out' : p.side}: how long it was in, and so its development, is an assumption.`,
  'record.from-paper': (p: { day: string; at: string }) => `Done on paper, typed in on ${p.day} at ${p.at}.`,
  'record.at-the-pour': (_: object) => 'At the pour',
  'record.noted-only': (p: { text: string }) => p.text,

  'paper.title': (_: object) => 'Type in a run done on paper',
  'paper.which': (_: object) => 'From which plan was it done?',
  'paper.which.how': (_: object) =>
    'A plan whose bench sheet lies beside you, or one that you make now as the run was done. Its sheet is then typed in row by row.',
  'paper.which.none': (_: object) =>
    'No plan waits on this bench. Plan the run as it was done; its page then leads here.',
  'paper.followed': (_: object) => 'This run was followed on a screen to its end; what was written down then stands.',
  'paper.planned-on': (p: { day: string }) => `planned ${p.day}`,
  'paper.under-way': (p: { day: string }) => `begun ${p.day}`,
  'paper.how': (_: object) =>
    'Row by row, as on the sheet. A moment is when hands began: the first drop, or the beginning of pouring out. An empty box stays unknown; the record says so.',
  'paper.minutes': (p: { at: string }) => `some second of ${p.at}`,
  'paper.day-hint': (_: object) => 'Of the first time on the sheet.',
  'paper.zero-hint': (_: object) => 'The first drop, as 14:05:30 or 14:05.',
  'paper.from-zero': (_: object) => 'empty: at zero',
  'paper.straight-after': (_: object) => 'empty: straight after',
  'paper.unknown': (_: object) => 'empty: not known',
  'paper.by-screen': (p: { at: string }) => `written down by a screen at ${p.at}`,
  'paper.at-pour': (_: object) => 'empty: at the pour',
  'paper.day-after': (p: { day: string }) => `, on ${p.day}`,
  'paper.sure': (_: object) => 'The sheet has it so',
  'paper.leave-out': (_: object) => 'was left out',
  'paper.wrong': (_: object) => 'What went wrong',
  'paper.wrong.tank': (p: { tank: string }) => `Tank ${p.tank}: what went wrong`,
  'paper.wrong.add': (_: object) => 'Something went wrong',
  'paper.wrong.remove': (p: { place: number }) => `Nothing went wrong ${p.place}`,
  'paper.wrong.at': (_: object) => 'The record reckons with it from then on.',
  'paper.wrong.needed': (_: object) => 'When did it go wrong? About is enough, as 14:12.',
  'paper.wrong.time': (_: object) => 'The sheet’s time at what was in the tank; empty: the planned one.',
  'paper.given-up': (p: { tank: string }) => `Tank ${p.tank} was given up`,
  'paper.given-up.why': (p: { tank: string }) => `Why tank ${p.tank} was given up`,
  'paper.given-up.at': (p: { tank: string }) => `Tank ${p.tank} given up at`,
  'paper.given-up.unknown': (_: object) => 'empty: after the last time on the sheet',
  'paper.wants': (p: { count: number }) =>
    `${p.count === 1 ? 'One field needs' : `${counted(p.count, 'field')} need`} another look before this can be kept.`,
  'paper.kept': (_: object) => 'What stood on the sheet is on record.',
  'paper.taken-back': (_: object) => 'What was typed in is taken back; the form still has it.',
  'paper.becomes': (_: object) => 'What the record will say',
  'paper.becomes.nothing': (_: object) => 'The record appears here as soon as one time is typed.',
  'paper.correct': (_: object) => 'Correct what was typed in',
  'paper.correct.how': (_: object) =>
    'What you change here is a new entry; what was typed before stays on record and no longer stands.',
} as const
