import type { Celsius, CelsiusDegrees } from '../../kernel/index.js'

/** How the true temperature beside a reading was known. */
export type CheckMethod = 'entered' | 'comparison' | 'ice' | 'boiling'

/** One finding about a thermometer: what it read, and what was true. */
export interface ThermometerCheck {
  readonly read: Celsius
  readonly true: Celsius
  readonly method: CheckMethod
}

/**
 * What a correction rests on. `unchecked`: no check says anything about this reading. `one-check`: a constant
 * offset. `between`: straight between two checks. `beyond`: the nearest check's offset held, with a wider band.
 */
export type CorrectionBasis = 'unchecked' | 'one-check' | 'between' | 'beyond'

/** A reading put right, °C, with what is left open about it. */
export interface CorrectedReading {
  readonly read: Celsius
  readonly true: Celsius
  /** True minus read: added to a reading. */
  readonly correction: CelsiusDegrees
  /** Give or take that remains, °C. */
  readonly band: CelsiusDegrees
  readonly basis: CorrectionBasis
}

/** What the checks of one thermometer make of its readings. */
export interface Correction {
  readonly at: (read: Celsius) => CorrectedReading
  /** Set to 20 when the only check is ice or boiling water: it says nothing about developing temperatures. */
  readonly saysNothingNear: Celsius | null
}
