import { z } from 'zod'
import { baths } from './baths.js'
import { Duration, Name, Temperature, Working } from './common.js'
import { formulas } from './formulas.js'
import { mixing } from './mixing.js'
import { negatives } from './negatives.js'
import { OrderRecords } from './orders.js'
import { Recipe } from './recipes.js'
import { ImportedRegister, RollRegister } from './register.js'
import { RollBatch, RollRecord, RollRecords, RollSummaries, TakeInRolls } from './rolls.js'
import { PastedReading, TimeAnswer, TimeStatement, WarningBody } from './times.js'
import { waste } from './waste.js'

/** A developing time to reckon with; the names on it may be left out. */
const StatedTime = TimeStatement.extend({ film: Name.default('this film'), developer: Name.default('this developer') })

/** How long at a temperature, with the factors that are wanted on it. */
export const TimeQuestion = z
  .strictObject({
    time: StatedTime,
    at_c: Temperature,
    thermometer_error_c: z.number().min(0).max(5).optional(),
    of_index: z.number().optional().describe('The index that the time is for; that of the time when left out.'),
    exposed_at: z.number().optional().describe('Pushes or pulls by practice.'),
    push: z.number().optional().describe('One’s own factor for push or pull.'),
    agitation: z.enum(['continuous', 'rotary']).optional(),
    use: z.number().optional().describe('Which use of the bath this is: 1 is fresh.'),
    pre_wet: z.number().optional(),
    factor: z.number().optional(),
  })
  .meta({ id: 'TimeQuestion' })

/** Readings, and the developing time they are counted against. */
export const DoseQuestion = z
  .strictObject({
    time: StatedTime,
    readings: z.array(z.strictObject({ at_s: Duration, temperature_c: Temperature })).max(20_000),
  })
  .meta({ id: 'DoseQuestion' })

/** Equivalent development of a log of readings. */
export const DoseAnswer = z
  .object({
    equivalent_s: z.number().describe('Seconds at the reference temperature that did as much development.'),
    reference: z.object({ temperature_c: z.number(), time_s: z.number() }),
    fraction: z.number().describe('Part of the reference time: 1 is fully developed.'),
    duration_s: z.number(),
    mean_rate: z.number(),
    law: z.enum(['exponential', 'arrhenius']),
    warnings: z.array(WarningBody),
    sentence: z.string(),
    working: Working,
  })
  .meta({ id: 'DoseAnswer' })

/** A reading, and what is known of its thermometer. */
export const ThermometerQuestion = z
  .strictObject({
    read_c: Temperature,
    checks: z
      .array(
        z.strictObject({
          read_c: Temperature,
          true_c: Temperature,
          method: z.enum(['entered', 'comparison', 'ice', 'boiling']).default('entered'),
        }),
      )
      .max(100)
      .default([]),
  })
  .meta({ id: 'ThermometerQuestion' })

/** A reading put right. */
export const ThermometerAnswer = z
  .object({
    read_c: z.number(),
    true_c: z.number(),
    correction_c: z.number(),
    band_c: z.number(),
    basis: z.enum(['unchecked', 'one-check', 'between', 'beyond']),
    sentence: z.string(),
    warnings: z.array(z.string()),
    working: Working,
  })
  .meta({ id: 'ThermometerAnswer' })

/** A list of baths by its id or in full, and how long its developer takes: stated, or by a time at a temperature. */
export const ScoreQuestion = z
  .strictObject({
    recipe: z.union([z.string().max(120), Recipe]),
    developer_time_s: Duration.optional(),
    time: StatedTime.optional(),
    at_c: Temperature.optional(),
  })
  .meta({ id: 'ScoreQuestion' })

const Moments = { start_s: z.number(), end_s: z.number() }

/** The score of a list of baths, in seconds from the beginning of the first pour. */
export const ScoreAnswer = z
  .object({
    recipe: z.object({ id: z.string(), name: z.string() }),
    length_s: z.number(),
    hands_busy_s: z.number(),
    baths: z.array(
      z.object({
        id: z.string(),
        name: z.string(),
        clock_start_s: z.number(),
        drain_start_s: z.number(),
        clock_end_s: z.number(),
        drain_end_s: z.number(),
      }),
    ),
    jobs: z.array(
      z.object({
        id: z.string(),
        kind: z.string(),
        ...Moments,
        parts: z.array(z.object({ part: z.string(), ...Moments })),
      }),
    ),
    warnings: z.array(WarningBody),
    working: Working,
  })
  .meta({ id: 'ScoreAnswer' })

/** What commands print with `--json`, by the name its schema is published under in docs/schemas. */
export const published = {
  'time-question': TimeQuestion,
  'time-answer': TimeAnswer,
  'dose-question': DoseQuestion,
  'dose-answer': DoseAnswer,
  'score-question': ScoreQuestion,
  'score-answer': ScoreAnswer,
  ...negatives,
  'thermometer-question': ThermometerQuestion,
  'thermometer-answer': ThermometerAnswer,
  'pasted-reading': PastedReading,
  ...baths,
  ...mixing,
  ...formulas,
  ...waste,
  'take-in-question': TakeInRolls,
  'take-in-answer': RollRecords,
  'roll-answer': RollRecord,
  'found-rolls': RollSummaries,
  'moved-rolls': RollBatch,
  orders: OrderRecords,
  'roll-register': RollRegister,
  'imported-register': ImportedRegister,
}
