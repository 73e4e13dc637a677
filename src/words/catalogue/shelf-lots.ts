import type { Grams, Millilitres } from '../../kernel/index.js'
import { counted } from '../counted.js'
import type { Writer } from '../writer.js'

type Told =
  | { readonly kind: 'brought-in' | 'topped-up' | 'moved' | 'taken-back' }
  | { readonly kind: 'mixed'; readonly parts: readonly number[] | null }
  | { readonly kind: 'used'; readonly rolls: number; readonly poured_ml: number; readonly lost_ml: number }
  | { readonly kind: 'discarded'; readonly where: Where }
  | { readonly kind: 'measured'; readonly found: number }
  | { readonly kind: 'tested'; readonly test: Test; readonly met_rolls: number }
  | { readonly kind: 'stationed'; readonly station: 'first' | 'second' | null }
  | { readonly kind: 'handed-over'; readonly to: string }
type Where = keyof typeof WHERE
type Test =
  | { readonly of: 'clearing'; readonly clears_s: number; readonly family: string; readonly fresh: boolean }
  | { readonly of: 'indicator'; readonly colour: string }
  | { readonly of: 'leader'; readonly darkens: 'fully' | 'weakly' | 'not'; readonly after_s: number }
  | { readonly of: 'residual-hypo' | 'residual-silver'; readonly passed: boolean }
  | { readonly of: 'ph'; readonly ph: number }
  | { readonly of: 'specific-gravity'; readonly gravity: number; readonly at_c: number | null }
/** What an entry changed in a container, by its name. */
type Leg = {
  readonly name: string
  readonly unit: 'ml' | 'g'
  readonly change: number
}

const WHERE = {
  jug: 'into a jug',
  'given-away': 'given away',
  spilt: 'spilt',
  'as-allowed': 'got rid of as allowed here',
} as const

const some = ({ change, unit }: Leg, w: Writer): string =>
  unit === 'ml' ? w.volume(Math.abs(change) as Millilitres) : w.mass(Math.abs(change) as Grams)
const number = (value: number): string => String(Number(value.toFixed(2)))

function tested(test: Test): string {
  switch (test.of) {
    case 'clearing':
      return `${test.family === 'ordinary' ? '' : `${test.family} film `}clears in ${test.clears_s}\u202fs${test.fresh ? ', the bath being fresh' : ''}`
    case 'indicator':
      return `its indicator is ${test.colour}`
    case 'leader':
      return `a leader darkened ${{ fully: 'fully', weakly: 'weakly', not: 'not at all' }[test.darkens]} in ${test.after_s}\u202fs`
    case 'residual-hypo':
      return `residual hypo ${test.passed ? 'passed' : 'did not pass'}`
    case 'residual-silver':
      return `residual silver ${test.passed ? 'passed' : 'did not pass'}`
    case 'ph':
      return `pH ${test.ph}`
    case 'specific-gravity':
      return `specific gravity ${test.gravity}`
  }
}

/** What happened, from the legs of the containers that it touched. */
function happened(told: Told, legs: readonly Leg[], w: Writer): string {
  const into = legs.filter(({ change }) => change > 0)
  const out = legs.filter(({ change }) => change < 0)
  const listed = (some_: readonly Leg[]) =>
    some_.map((leg) => `${some(leg, w)} ${leg.change < 0 ? 'of' : 'into'} ${leg.name}`)
  switch (told.kind) {
    case 'brought-in':
      return 'brought in'
    case 'mixed':
      return ['mixed', ...listed(into), ...listed(out)].join(', ')
    case 'used':
      return `${counted(Number(number(told.rolls)), 'roll')} in ${w.volume(told.poured_ml as Millilitres)} of ${legs[0]?.name ?? 'it'}; ${w.volume(told.lost_ml as Millilitres)} did not come back`
    case 'topped-up':
      return `topped up with ${into.map((leg) => some(leg, w)).join()} from ${out[0]?.name ?? 'elsewhere'}`
    case 'moved':
      return `${into.map((leg) => some(leg, w)).join()} poured from ${out[0]?.name ?? 'elsewhere'} into ${into[0]?.name ?? 'elsewhere'}`
    case 'discarded':
      return `${out.map((leg) => `${some(leg, w)} of ${leg.name}`).join()} ${told.where === 'jug' ? `into ${into[0]?.name ?? 'a jug'}` : WHERE[told.where]}`
    case 'measured':
      return `${legs[0]?.name ?? 'it'} measured: ${legs[0] ? some({ ...legs[0], change: told.found }, w) : told.found}`
    case 'tested':
      return `tested after ${number(told.met_rolls)} rolls: ${tested(told.test)}`
    case 'stationed':
      return told.station === null ? 'no longer one of two baths' : `${told.station} of two baths from here on`
    case 'handed-over':
      return `handed over to ${told.to}`
    case 'taken-back':
      return 'an entry taken back'
  }
}

/** Sentences of lots: what happened to a mixed batch, and what is done with it. */
export const shelfLotsWords = {
  'lot.title': (p: { product: string; ratio: string | null; code: string }) =>
    `${p.product}${p.ratio === null ? '' : ` ${p.ratio}`}, lot ${p.code}`,
  'lot.lead': (p: { where: readonly string[] }) =>
    p.where.length === 0 ? 'Nothing of it is left.' : `${p.where.join('; ')}.`,
  'lot.row': (p: { day: string; by: string; volume: number }, w: Writer) =>
    `${w.volume(p.volume as Millilitres)} mixed ${p.day} by ${p.by}`,
  'lot.none': (_: object) => 'No lot was ever mixed here.',
  'lot.none-found': (_: object) => 'No lot has these words. Try its code, such as 26-007, or its product.',
  'lot.found': (p: { shown: number; found: number }) =>
    p.shown === p.found
      ? `${counted(p.found, 'lot')}.`.replace(/^./, (one) => one.toUpperCase())
      : `${p.shown} of ${p.found} lots, newest first.`,
  'lot.entry': (p: { told: Told; legs: readonly Leg[] }, w: Writer) => happened(p.told, p.legs, w),
  'lot.retracted': (_: object) => 'taken back',
  'lot.taken-back': (_: object) => 'It is taken back; both entries stay on record.',
  'lot.where': (p: { where: Where }) => WHERE[p.where],

  'lot.discard.where': (_: object) => 'Where did it go?',
  'lot.discard.jug': (p: { name: string }) => `Into ${p.name}`,
  'lot.discard.no-jug': (_: object) => 'No jug for waste stands on the shelf. Add one first; spent fixer waits in it.',
  'lot.discard.never': (_: object) =>
    'It holds silver or poison: it is kept in a jug and handed over, never poured down a drain. Septic tank and garden: never.',
  'lot.discard.codes': (_: object) =>
    'What may go where you live, local codes and the receiving authority decide. Septic tank and garden: never.',
  'lot.discarded': (p: { name: string }) => `What was in ${p.name} is booked out.`,
  'lot.amount-hint': (_: object) => 'Empty is all of it.',
  'lot.move.into': (_: object) => 'Into an empty bottle, or one of the same lot.',
  'lot.move.none': (_: object) => 'No other bottle is empty. Add one first.',
  'lot.moved': (p: { name: string }) => `It stands in ${p.name} now.`,
  'lot.measured': (p: { name: string }) => `${p.name} is booked as measured; the old figure stays on record.`,
  'lot.used': (p: { rolls: number }) =>
    `${counted(Number(number(p.rolls)), 'roll')} counted.`.replace(/^./, (one) => one.toUpperCase()),
  'lot.use.lead': (_: object) =>
    'A run that takes from this bottle counts by itself. This is for film that no run knows of.',
  'lot.use.count': (p: { text: string }) => `“${p.text}” is no count. Write a whole number from 1, such as 2.`,
  'lot.use.lost-hint': (_: object) => 'Empty is 20 mL a roll, or what its product says.',
  'lot.use.gone': (_: object) => 'It is used once: what is poured out does not come back.',
  'lot.topped-up': (p: { name: string }) => `${p.name} is topped up.`,
} as const
