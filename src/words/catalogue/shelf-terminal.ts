import type { Millilitres } from '../../kernel/index.js'
import type { Writer } from '../writer.js'

const DECIDES = {
  volume: 'its volume',
  count: 'its count',
  silver: 'its silver',
  tests: 'its tests',
  acid: 'its acid',
  age: 'its age',
} as const
const KIND = {
  'brought-in': 'brought in',
  mixed: 'mixed',
  used: 'used',
  'topped-up': 'topped up',
  moved: 'poured over',
  discarded: 'discarded',
  measured: 'measured',
  tested: 'tested',
  stationed: 'said to be first or second bath',
  'handed-over': 'handed over',
  'taken-back': 'taken back',
} as const
const rolls = (count: number): string => (count === 1 ? '1 roll' : `${count} rolls`)
const grams = (value: number): string => `${Number(value.toPrecision(2))} g`

/** What a line about a bottle or a package is written from. */
export interface Holds {
  readonly name: string
  readonly amount: string
  readonly what: string
  readonly whole: number | null
  readonly decides: keyof typeof DECIDES | null
  readonly ends: string | null
  readonly finished: boolean
}

/** Lines about the shelf at a terminal, and on its lists. */
export const shelfTerminalWords = {
  'shelf.line.empty': (p: { name: string }) => `${p.name}: empty`,
  'shelf.line.lot': (p: { product: string; code: string }) => `${p.product}, lot ${p.code}`,
  'shelf.line.holds': (p: Holds) =>
    [
      `${p.name}: ${p.amount} of ${p.what}`,
      ...(p.finished ? ['finished'] : p.whole === null ? [] : [`${rolls(p.whole)} left`]),
      ...(p.decides === null ? [] : [`${DECIDES[p.decides]} decides`]),
      ...(p.ends === null ? [] : [`until ${p.ends}`]),
    ].join('; '),
  'shelf.line.jug': (
    p: {
      name: string
      held: Millilitres
      holds: Millilitres
      silver: { low: number; usual: number; high: number }
      full: boolean
      fullOn: string | null
    },
    w: Writer,
  ) =>
    [
      `${p.name}: ${w.volume(p.held)} of ${w.volume(p.holds)}`,
      ...(p.silver.usual > 0
        ? [`about ${grams(p.silver.usual)} of silver, ${grams(p.silver.low)} to ${grams(p.silver.high)}`]
        : []),
      ...(p.full ? ['full: hand it over'] : p.fullOn === null ? [] : [`full by ${p.fullOn}`]),
    ].join('; '),
  'shelf.line.mixed': (
    p: { code: string; product: string; at: string; volume: Millilitres; parts: string | null },
    w: Writer,
  ) => `Lot ${p.code}: ${w.volume(p.volume)} of ${p.product}${p.parts === null ? '' : `, ${p.parts}`}, mixed ${p.at}`,
  'shelf.line.cost': (p: { amount: string; each: string | null; whole: boolean }) =>
    `It cost ${p.amount}${p.whole ? '' : ' at least'}${p.each === null ? '' : `, ${p.each} a roll`}.`,
  'shelf.line.entry': (p: {
    at: string
    kind: keyof typeof KIND
    changed: string | null
    note: string
    retracted: boolean
  }) =>
    `${p.at}: ${KIND[p.kind]}${p.changed === null ? '' : `, ${p.changed}`}${p.note === '' ? '' : `, ${p.note}`}${p.retracted ? ' (taken back)' : ''}`,
  'shelf.line.nothing': (_: object) => 'Nothing stands on the shelf yet.',
  'shelf.line.found': (p: { found: number }) => `${p.found} found.`,
  'shelf.line.product': (p: { name: string; role: string; use: string }) => `${p.name}: ${p.role}, ${p.use}`,
  'shelf.line.kept': (p: { name: string }) => `${p.name} is kept.`,
  'shelf.line.pair': (p: { used: number; verdict: 'carry-on' | 'rotate'; left: number }) =>
    p.verdict === 'rotate'
      ? `Rotate: ${Math.round(p.used * 100)} % of the first bath are used. It goes to the jug, the second becomes the first.`
      : `Carry on: ${Math.round(p.used * 100)} % of the first bath are used, ${Number(p.left.toFixed(1))} rolls are left.`,
} as const
