import { z } from 'zod'
import { Id, InstantText, Name, Note, Revision, Temperature } from './common.js'

export const ThermometerKind = z.enum(['spirit', 'mercury', 'digital', 'dial', 'other'])
export const CheckMethod = z.enum(['entered', 'comparison', 'ice', 'boiling', 'class-set'])

export const ThermometerStatement = z
  .strictObject({
    name: Name,
    kind: ThermometerKind,
    scale_low_c: Temperature,
    scale_high_c: Temperature,
    note: Note.default(''),
  })
  .meta({ id: 'ThermometerStatement' })

export const ThermometerCheck = z
  .object({
    id: Id,
    at: InstantText,
    method: CheckMethod,
    read_c: Temperature,
    true_c: Temperature,
    set_id: Id.nullable(),
    withdrawn: z.boolean(),
  })
  .meta({ id: 'ThermometerCheck' })

export const ThermometerRecord = ThermometerStatement.extend({
  id: Id,
  revision: Revision,
  saved_at: InstantText,
  removed: z.boolean(),
  checks: z.array(ThermometerCheck),
}).meta({ id: 'ThermometerRecord' })
export const ThermometerRecords = z
  .object({ thermometers: z.array(ThermometerRecord) })
  .meta({ id: 'ThermometerRecords' })

export const AddThermometer = ThermometerStatement.meta({ id: 'AddThermometer' })
export const CorrectThermometer = z
  .strictObject({ seen_revision: Revision, statement: ThermometerStatement })
  .meta({ id: 'CorrectThermometer' })

/** One check. `true_c` for entered and comparison; `altitude_m` or `pressure_hpa` for boiling; ice is 0 °C. */
export const AddCheck = z
  .strictObject({
    method: z.enum(['entered', 'comparison', 'ice', 'boiling']),
    read_c: Temperature,
    true_c: Temperature.optional(),
    altitude_m: z.number().min(-500).max(6000).optional(),
    pressure_hpa: z.number().min(450).max(1100).optional(),
  })
  .meta({ id: 'AddCheck' })

/** Several thermometers in one beaker. Without a trusted one, the median stands for the truth. */
export const AddClassSet = z
  .strictObject({
    trusted_id: Id.nullable(),
    readings: z.array(z.strictObject({ thermometer_id: Id, read_c: Temperature })).max(60),
  })
  .meta({ id: 'AddClassSet' })
export const ClassSetResult = z
  .object({
    set_id: Id,
    true_c: z.number(),
    by: z.enum(['trusted', 'median']),
    trusted_id: Id.nullable(),
    spread_c: z.number(),
    offsets: z.array(z.object({ thermometer_id: Id, read_c: z.number(), offset_c: z.number() })),
  })
  .meta({ id: 'ClassSetResult' })
