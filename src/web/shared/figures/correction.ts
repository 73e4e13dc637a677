import { celsius, type Result } from '../../../kernel/index.js'
import { type Correction, correctionOf, newestChecks } from '../../../science/index.js'
import type { ThermometerRecord } from '../../../wire/index.js'

/** What a thermometer's standing checks make of its readings. */
export const correctionFor = (thermometer: Pick<ThermometerRecord, 'checks'>): Result<Correction> =>
  correctionOf(
    newestChecks(
      thermometer.checks
        .filter((check) => !check.withdrawn)
        .map((check) => ({
          read: celsius(check.read_c),
          true: celsius(check.true_c),
          method: check.method === 'class-set' ? 'comparison' : check.method,
        })),
    ),
  )
