import { ok, type Result } from '../../kernel/index.js'
import { refusedOutside } from '../range.js'

/** A tank that is topped up after each roll. */
export interface Replenished {
  /** mL */
  readonly volume: number
  /** mL taken out and put back a roll: what is carried out and what is let off together. */
  readonly rate: number
  /** g that a roll releases (bromide), or below zero what it uses up (agent). */
  readonly perRoll: number
  /** g/L of it in the replenisher. */
  readonly replenisher: number
  /** g/L of it in the tank at the start. */
  readonly start: number
}

function wrong({ volume, rate, perRoll, replenisher, start }: Replenished) {
  return (
    refusedOutside('life.bad-value', 'A volume in millilitres', volume, { low: 50, high: 1_000_000 }, 'volume') ??
    refusedOutside(
      'life.bad-value',
      'What is replaced a roll, in millilitres,',
      rate,
      { low: 0.1, high: volume },
      'rate',
    ) ??
    refusedOutside('life.bad-value', 'Grams a roll', perRoll, { low: -100, high: 100 }, 'perRoll') ??
    refusedOutside('life.bad-value', 'The replenisher in g/L', replenisher, { low: 0, high: 1000 }, 'replenisher') ??
    refusedOutside('life.bad-value', 'The start in g/L', start, { low: 0, high: 1000 }, 'start')
  )
}

/** What is in the tank once it has been topped up after so many rolls, g/L. */
export interface ReplenishedState {
  readonly concentration: number
}

/**
 * Mass balance, film first and topping up after it: c' = (c + b/V)(1 − R/V) + c_r R/V, in closed form for n rolls.
 * Refused where it would fall below none of it.
 */
export function afterRolls(bath: Replenished, rolls: number): Result<ReplenishedState> {
  const refused = wrong(bath) ?? refusedOutside('life.bad-value', 'Rolls', rolls, { low: 0, high: 100_000 }, 'rolls')
  if (refused) return refused
  const keep = 1 - bath.rate / bath.volume
  const end = plateauOf(bath) - topping(bath)
  const concentration = end + (bath.start - end) * keep ** rolls
  return (
    refusedOutside('life.bad-value', 'What is left of it, in g/L,', concentration, { low: -1e-9, high: 1e6 }) ??
    ok({ concentration: Math.max(0, concentration) })
  )
}

/** Steady state just before topping up, g/L: c_r + b/R. */
const plateauOf = ({ replenisher, perRoll, rate }: Replenished): number => replenisher + (perRoll * 1000) / rate
/** Topping up takes it down by what one roll put in. */
const topping = ({ perRoll, volume }: Replenished): number => (perRoll * 1000) / volume

/** Where a replenished bath settles. */
export interface Plateau {
  /** g/L just before topping up: what the film develops in at worst. */
  readonly beforeTopping: number
  /** g/L just after. */
  readonly afterTopping: number
  /** Rolls to nineteen twentieths of the way. */
  readonly rollsTo95: number
}

/** Plateau and the rolls that lead there. A bath that is wholly replaced each time is there after one. */
export function plateau(bath: Replenished): Result<Plateau> {
  const refused = wrong(bath)
  if (refused) return refused
  const before = plateauOf(bath)
  const low = refusedOutside('life.bad-value', 'Where it settles, in g/L,', before - topping(bath), {
    low: -1e-9,
    high: 1e6,
  })
  if (low) return low
  const keep = 1 - bath.rate / bath.volume
  return ok({
    beforeTopping: before,
    afterTopping: before - topping(bath),
    rollsTo95: keep <= 0 ? 1 : Math.log(0.05) / Math.log(keep),
  })
}

/** How strong a replenisher must be to hold a bath at an aim: c_aim + k/R for what each roll uses up. */
export function replenisherFor(aim: number, usedPerRoll: number, rate: number): Result<number> {
  const refused =
    refusedOutside('life.bad-value', 'The aim in g/L', aim, { low: 0, high: 1000 }, 'aim') ??
    refusedOutside('life.bad-value', 'Grams used up a roll', usedPerRoll, { low: 0, high: 100 }, 'used') ??
    refusedOutside(
      'life.bad-value',
      'What is replaced a roll, in millilitres,',
      rate,
      { low: 0.1, high: 100_000 },
      'rate',
    )
  return refused ?? ok(aim + (usedPerRoll * 1000) / rate)
}

/** One entry in the book of a bath, mL. */
export interface BookEntry {
  readonly added?: number
  readonly discarded?: number
  readonly carriedOut?: number
}

/** What the book says is in the tank. */
export interface BookBalance {
  readonly volume: number
  readonly added: number
  readonly discarded: number
  readonly carriedOut: number
}

/** Volumes as they were written down; a book that goes below empty is refused. */
export function balanceOf(start: number, entries: readonly BookEntry[]): Result<BookBalance> {
  const range = { low: 0, high: 1_000_000 }
  const total = { volume: start, added: 0, discarded: 0, carriedOut: 0 }
  const first = refusedOutside('life.bad-value', 'The start in millilitres', start, range, 'start')
  if (first) return first
  for (const { added = 0, discarded = 0, carriedOut = 0 } of entries) {
    for (const value of [added, discarded, carriedOut]) {
      const refused = refusedOutside('life.bad-value', 'A volume in the book, in millilitres,', value, range)
      if (refused) return refused
    }
    total.added += added
    total.discarded += discarded
    total.carriedOut += carriedOut
    total.volume += added - discarded - carriedOut
    const empty = refusedOutside('life.bad-value', 'What the book leaves, in millilitres,', total.volume, {
      low: -1e-6,
      high: 1e9,
    })
    if (empty) return empty
  }
  return ok({ ...total, volume: Math.max(0, total.volume) })
}
