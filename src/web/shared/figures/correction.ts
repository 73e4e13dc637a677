import { celsius, type Result } from '../../../kernel/index.js'
import { type Correction, correctionByRecord } from '../../../science/index.js'
import type { ThermometerRecord } from '../../../wire/index.js'

/** What a thermometer's standing checks make of its readings. */
export const correctionFor = ({ checks }: Pick<ThermometerRecord, 'checks'>): Result<Correction> =>
  correctionByRecord(
    checks.map(({ read_c, true_c, method, withdrawn }) => ({
      read: celsius(read_c),
      true: celsius(true_c),
      method,
      withdrawn,
    })),
  )
