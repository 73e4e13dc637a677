import { type Millilitres, ok, type Result } from '../../kernel/index.js'
import { refusedOutside } from '../range.js'

/** A bottle and the tank that is filled from it. */
export interface Fills {
  /** In the bottle now. */
  readonly inBottle: Millilitres
  /** What the tank takes. */
  readonly fill: Millilitres
  /** Rolls in one tank. */
  readonly rollsPerFill: number
  /** What each fill does not give back: carried out by wet film and tank, or all of it for a bath that is used once. */
  readonly lost: Millilitres
}

const VOLUME = { low: 0, high: 1_000_000 }

/**
 * Rolls until the bottle no longer fills the tank: after each fill `lost` is gone. 1 000 mL, 500 mL a fill, 20 mL lost:
 * 26 fills. Fill and loss from 0.1 mL, a fill at least its loss, 1 to 100 rolls a fill; else refused.
 */
export function rollsByVolume({ inBottle, fill, rollsPerFill, lost }: Fills): Result<number> {
  const refused =
    refusedOutside('life.bad-value', 'What is in the bottle, in millilitres,', inBottle, VOLUME, 'inBottle') ??
    refusedOutside('life.bad-value', 'A fill in millilitres', fill, { ...VOLUME, low: 0.1 }, 'fill') ??
    refusedOutside('life.bad-value', 'Rolls in a fill', rollsPerFill, { low: 1, high: 100 }, 'rollsPerFill') ??
    refusedOutside('life.bad-value', 'What a fill loses, in millilitres,', lost, { low: 0.1, high: fill }, 'lost')
  if (refused) return refused
  // The last digit of a division must not cost a fill: 0.3 mL is three times 0.1 mL.
  const fills = inBottle < fill ? 0 : Math.floor((inBottle - fill) / lost + 1e-9) + 1
  return ok(fills * rollsPerFill)
}
