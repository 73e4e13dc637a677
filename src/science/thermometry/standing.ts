import type { Result } from '../../kernel/index.js'
import { correctionOf } from './correction.js'
import type { CheckMethod, Correction, ThermometerCheck } from './definition.js'
import { newestChecks } from './newest-checks.js'

/** How a check on record came about: by itself, or in a beaker with several thermometers. */
export type KeptMethod = CheckMethod | 'class-set'

/** A check as it is kept; one that was withdrawn stays on record and counts for nothing. */
export interface KeptCheck extends Omit<ThermometerCheck, 'method'> {
  readonly method: KeptMethod
  readonly withdrawn: boolean
}

/** What a kept check counts as: a thermometer read in a set was compared with the others in the beaker. */
export const methodOf = (kept: KeptMethod): CheckMethod => (kept === 'class-set' ? 'comparison' : kept)

/**
 * What the checks on a thermometer's record, oldest first, make of its readings: withdrawn ones left out, newer ones
 * in the place of older ones near them. Refused as by `correctionOf`.
 */
export const correctionByRecord = (checks: readonly KeptCheck[]): Result<Correction> =>
  correctionOf(
    newestChecks(
      checks
        .filter((check) => !check.withdrawn)
        .map((check) => ({ read: check.read, true: check.true, method: methodOf(check.method) })),
    ),
  )
