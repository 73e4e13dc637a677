import { rollPaperWords } from './roll-paper.js'

type Line = Parameters<(typeof rollPaperWords)['slip.cut']>[0] &
  Parameters<(typeof rollPaperWords)['slip.wanted']>[0] & {
    readonly film: string
    readonly whose: string | null
  }

/** Film, cut, whose it is and what is wanted, in one line. */
const about = (p: Line): string =>
  [
    p.film,
    rollPaperWords['slip.cut'](p),
    ...(p.whose === null ? [] : [`of ${p.whose}`]),
    rollPaperWords['slip.wanted'](p),
  ].join(', ')

/** Rolls as a terminal lists them. */
export const rollLinesWords = {
  'roll.line': (p: Line & { number: string; state: string }) =>
    `${p.number}  ${about(p)}: ${p.state.replace('-', ' ')}`,
  'roll.line-read': (p: Line & { line: number; count: number }) =>
    `Line ${p.line}: ${p.count === 1 ? '' : `${p.count} × `}${about(p)}`,
  'roll.dry-run': (p: { count: number }) => `${p.count} would be taken in; nothing was kept.`,
  'roll.found': (p: { found: number; shown: number }) =>
    p.found > p.shown ? `${p.found} found, the newest ${p.shown} shown.` : `${p.found} found.`,
  'roll.step': (p: { at: string; state: string; hook: string; reason: string; retracted: boolean }) =>
    [
      `${p.at}  ${p.state.replace('-', ' ')}`,
      ...(p.hook === '' ? [] : [`on ${p.hook}`]),
      ...(p.reason === '' ? [] : [`because: ${p.reason}`]),
      ...(p.retracted ? ['(taken back)'] : []),
    ].join(' '),
  'order.line': (p: { id: string; person: string; here: number; counted_in: number; due: string | null }) =>
    `${p.id}  ${p.person}: ${p.here} of ${p.counted_in} taken in${p.due === null ? '' : `, due ${p.due}`}`,
  'register.exported': (p: { rolls: number; file: string }) => `${p.rolls} rolls with their ways are in ${p.file}.`,
  'register.imported': (p: { rolls: number; orders: number; films: number; there: number }) =>
    `Taken in: ${p.rolls} rolls, ${p.orders} orders, ${p.films} films. ${p.there} rolls were there already.`,
  'paper.written': (p: { file: string }) => `${p.file} is ready to print.`,
} as const
