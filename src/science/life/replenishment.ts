import { failed, type Millilitres, ok, problem, type Result } from '../../kernel/index.js'
import { refusedOutside } from '../range.js'

/** A bath that is topped up after each roll, and one thing in it. */
export interface Replenished {
  /** 50 mL to a cubic metre. */
  readonly volume: Millilitres
  /** R: taken out and put back a roll, what is carried out and what is let off together. From 0.1 mL to the volume. */
  readonly rate: Millilitres
  /** b: grams that a roll releases (bromide); below zero what it uses up (agent). −100 to 100. */
  readonly perRoll: number
  /** c_r: g/L of it in the replenisher, 0 to 1000. */
  readonly replenisher: number
  /** c: g/L of it in the bath at the start, 0 to 1000. */
  readonly start: number
}

const VOLUME = { low: 50, high: 1_000_000 }
const STRENGTH = { low: 0, high: 1000 }
const ROLLS = { low: 0, high: 100_000 }

function wrong({ volume, rate, perRoll, replenisher, start }: Replenished) {
  return (
    refusedOutside('life.bad-value', 'A volume in millilitres', volume, VOLUME, 'volume') ??
    wrongRate(rate, volume) ??
    refusedOutside('life.bad-value', 'Grams a roll', perRoll, { low: -100, high: 100 }, 'perRoll') ??
    refusedOutside('life.bad-value', 'The replenisher in g/L', replenisher, STRENGTH, 'replenisher') ??
    refusedOutside('life.bad-value', 'The start in g/L', start, STRENGTH, 'start')
  )
}

const wrongRate = (rate: number, most: number) =>
  refusedOutside('life.bad-value', 'What is replaced a roll, in millilitres,', rate, { low: 0.1, high: most }, 'rate')

/** b/V: what one roll adds to the bath or takes from it, g/L. */
const step = ({ perRoll, volume }: Replenished): number => (perRoll * 1000) / volume
/** 1 − R/V: what stays of the bath at each topping up. */
const kept = ({ rate, volume }: Replenished): number => 1 - rate / volume
/** The steady state just before topping up: c_r + b/R. */
const before = ({ replenisher, perRoll, rate }: Replenished): number => replenisher + (perRoll * 1000) / rate

/** Refused when a roll would use up more than is there; the lowest the bath comes to is just before topping up. */
function usedUp(lowest: number, rolls: number) {
  return lowest < -1e-9 ? failed(problem('life.used-up', { rolls: Math.round(rolls) })) : null
}

/** g/L after so many rolls, by the closed form of the balance. */
function strengthAfter(bath: Replenished, rolls: number): number {
  const end = before(bath) - step(bath)
  return end + (bath.start - end) * kept(bath) ** rolls
}

/**
 * g/L once the bath has been topped up after so many rolls: c' = (c + b/V)(1 − R/V) + c_r R/V, film first.
 * A litre with 70 mL and 50 mg of bromide a roll, none at the start: 46.5 mg/L after one roll, 509 after twenty.
 * Whole rolls 0 to 100 000. Refused where the bath would hold less than none of it.
 */
export function afterRolls(bath: Replenished, rolls: number): Result<number> {
  const refused =
    wrong(bath) ??
    refusedOutside('life.bad-value', 'Rolls', rolls, ROLLS, 'rolls') ??
    (Number.isInteger(rolls) ? null : failed(problem('life.not-whole', { what: 'Rolls', value: rolls }, 'rolls')))
  if (refused) return refused
  if (rolls === 0) return ok(bath.start)
  // The strength moves one way, so the lowest is at the first or at the last roll.
  const lowest = Math.min(bath.start, strengthAfter(bath, rolls - 1)) + step(bath)
  return usedUp(lowest, rolls) ?? ok(Math.max(0, strengthAfter(bath, rolls)))
}

/** Where a replenished bath settles. */
export interface Plateau {
  /** g/L just before topping up, c_r + b/R. */
  readonly beforeTopping: number
  /** g/L just after, which is what the next film meets: less b/V. */
  readonly afterTopping: number
}

/**
 * The plateau: 0.714 g/L before topping up for 70 mL and 50 mg of bromide a roll. Refused where it would lie below none.
 */
export function plateau(bath: Replenished): Result<Plateau> {
  const refused = wrong(bath)
  if (refused) return refused
  const [high, low] = [before(bath), before(bath) - step(bath)]
  const none = Math.min(high, low) < -1e-9 ? failed(problem('life.never-settles', {})) : null
  return none ?? ok({ beforeTopping: Math.max(0, high), afterTopping: Math.max(0, low) })
}

/**
 * Rolls until only a part of the way to the plateau is left: ln(part)/ln(1 − R/V), 41.3 to 0.05 for 70 mL in a litre.
 * A part from 0.000 001 to 0.99. A bath that is wholly replaced is there after one roll.
 */
export function rollsToPlateau(bath: Pick<Replenished, 'volume' | 'rate'>, part = 0.05): Result<number> {
  const { volume, rate } = bath
  const refused =
    refusedOutside('life.bad-value', 'A volume in millilitres', volume, VOLUME, 'volume') ??
    wrongRate(rate, volume) ??
    refusedOutside('life.bad-value', 'The part of the way left', part, { low: 1e-6, high: 0.99 }, 'part')
  if (refused) return refused
  return ok(rate === volume ? 1 : Math.log(part) / Math.log1p(-rate / volume))
}

/**
 * g/L that a replenisher needs to hold a bath at an aim, c_aim + k/R, k the grams a roll uses up: for 2 g/L, 0.1 g and
 * 50 mL a roll 4 g/L.
 */
export function replenisherFor(aim: number, usedPerRoll: number, rate: Millilitres): Result<number> {
  const refused =
    refusedOutside('life.bad-value', 'The aim in g/L', aim, STRENGTH, 'aim') ??
    refusedOutside('life.bad-value', 'Grams used up a roll', usedPerRoll, { low: 0, high: 100 }, 'usedPerRoll') ??
    wrongRate(rate, VOLUME.high)
  return refused ?? ok(aim + (usedPerRoll * 1000) / rate)
}
