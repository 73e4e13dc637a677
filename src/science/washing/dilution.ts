import { ok, type Result } from '../../kernel/index.js'
import { refusedOutside } from '../range.js'
import { WASHING_LIMITS } from './definition.js'

const { volume: VOLUME, carried: CARRIED, time: TIME, flow: FLOW } = WASHING_LIMITS

/** Part left after n full changes, each at equilibrium: (v/(V+v))^n. v is what film and walls carry over, mL. */
export function afterChanges(changes: number, volume: number, carried: number): Result<number> {
  const refused =
    refusedOutside(
      'washing.bad-value',
      'Changes of water',
      changes,
      { low: 0, high: WASHING_LIMITS.steps },
      'changes',
    ) ??
    refusedOutside('washing.bad-value', 'A volume in millilitres', volume, VOLUME, 'volume') ??
    refusedOutside('washing.bad-value', 'What is carried over, in millilitres,', carried, CARRIED, 'carried')
  return refused ?? ok((carried / (volume + carried)) ** changes)
}

/** Part left in a mixed vessel with water running through: exp(−Q t / V). Flow in mL a minute, time in s. */
export function afterFlow(perMinute: number, time: number, volume: number): Result<number> {
  const refused =
    refusedOutside('washing.bad-value', 'A flow in millilitres a minute', perMinute, FLOW, 'flow') ??
    refusedOutside('washing.bad-value', 'A time in seconds', time, TIME, 'time') ??
    refusedOutside('washing.bad-value', 'A volume in millilitres', volume, VOLUME, 'volume')
  return refused ?? ok(Math.exp((-perMinute * time) / 60 / volume))
}

/** Part left in the gelatin after a time: 0.5^(t/T½). */
export function afterDiffusion(time: number, halfLife: number): Result<number> {
  const refused =
    refusedOutside('washing.bad-value', 'A time in seconds', time, TIME, 'time') ??
    refusedOutside('washing.bad-value', 'A half-life in seconds', halfLife, { low: 1, high: 3600 }, 'halfLife')
  return refused ?? ok(0.5 ** (time / halfLife))
}

/** Thiosulfate in the first fill, g/L: what film and walls held, less what a rinse of film took first. */
export interface FirstFill {
  readonly gramsPerLitre: number
  readonly rinsed: number
}

/**
 * What the first fill is at: held (mg) over its volume, and after a rinse that leaves so large a part of it. 600 mg in
 * 500 mL is 1.2 g/L; with a fifth left by rinsing film and walls, 0.24 g/L (Torzynski 2004). A fill does not remove half.
 */
export function firstFill(held: number, volume: number, leftByRinse: number): Result<FirstFill> {
  const refused =
    refusedOutside('washing.bad-value', 'What is held, in milligrams,', held, { low: 0, high: 100_000 }, 'held') ??
    refusedOutside('washing.bad-value', 'A volume in millilitres', volume, VOLUME, 'volume') ??
    refusedOutside('washing.bad-value', 'The part that a rinse leaves', leftByRinse, { low: 0, high: 1 }, 'rinse')
  return refused ?? ok({ gramsPerLitre: held / volume, rinsed: (held * leftByRinse) / volume })
}
