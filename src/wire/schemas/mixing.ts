import { z } from 'zod'
import type { Celsius, Grams, Millilitres, Seconds } from '../../kernel/index.js'
import { Duration, Name, Temperature, Working } from './common.js'

const Degrees = Temperature as unknown as z.ZodType<Celsius>
const Time = Duration as unknown as z.ZodType<Seconds>
const Volume = z.number().min(0).max(1_000_000).describe('millilitres') as unknown as z.ZodType<Millilitres>
const Mass = z.number().min(0).max(1_000_000).describe('grams') as unknown as z.ZodType<Grams>
const Parts = z.array(z.number()).max(8).describe('1 + 4 is [1, 4]; undiluted is [1].')
const Percent = z.number()
const Sourced = { origin: z.string(), source: z.string() }
const Said = { sentences: z.array(z.string()), working: Working }

/** Water, or a thing of so many grams; a thing without its material counts as that much water. */
export const Thing = z.strictObject({
  mass_g: Mass,
  temperature_c: Degrees,
  material: z.enum(['steel', 'plastic', 'glass', 'film']).optional(),
})
const Vessel = z.strictObject({
  volume_ml: Volume,
  material: z.enum(['steel', 'plastic', 'glass']),
  stands_in: z.enum(['air', 'water']).default('air'),
})

/** One question about warm and cold, by `ask`. */
export const TemperQuestion = z
  .discriminatedUnion('ask', [
    z.strictObject({
      ask: z.literal('taps'),
      volume_ml: Volume,
      wanted_c: Degrees,
      hot_c: Degrees,
      cold_c: Degrees,
      vessel: Thing.optional(),
    }),
    z.strictObject({ ask: z.literal('together'), things: z.array(Thing).max(24) }),
    z.strictObject({
      ask: z.literal('pour'),
      volume_ml: Volume,
      wanted_c: Degrees,
      things: z.array(Thing).max(24).describe('Tank, reels, film: what the solution meets.'),
    }),
    z.strictObject({ ask: z.literal('ice'), volume_ml: Volume, from_c: Degrees, wanted_c: Degrees }),
    z.strictObject({
      ask: z.literal('standing'),
      around_c: Degrees,
      from_c: Degrees.optional().describe('Left out, the last reading.'),
      constant_s: z.number().optional().describe('One of constant, readings and vessel.'),
      readings: z
        .array(z.strictObject({ at_s: Time, temperature_c: Degrees }))
        .max(1000)
        .optional(),
      reading_error_c: z.number().optional(),
      vessel: Vessel.optional(),
      after_s: Time.optional(),
      wanted_c: Degrees.optional().describe('When it comes to this; with `after_s`, what start has it as its mean.'),
    }),
    z.strictObject({ ask: z.literal('cold'), temperature_c: Degrees }),
    z.strictObject({
      ask: z.literal('baths'),
      baths: z
        .array(
          z.strictObject({
            name: Name,
            temperature_c: Degrees,
            develops: z.boolean().default(false),
            window: z.strictObject({ from_c: Degrees, to_c: Degrees }).nullable().default(null),
          }),
        )
        .max(64),
    }),
  ])
  .meta({ id: 'TemperQuestion' })

const Factor = z.object({ factor: z.number(), ...Sourced })

export const TemperAnswer = z
  .discriminatedUnion('ask', [
    z.object({
      ask: z.literal('taps'),
      hot_ml: z.number(),
      cold_ml: z.number(),
      for_vessel_ml: z.number().describe('Of the hot water, what only warms the vessel; below 0 the vessel spares it.'),
      simple_rule_off_c: z.number().describe('What the mean by volume takes too high for these waters.'),
      ...Said,
    }),
    z.object({ ask: z.literal('together'), temperature_c: z.number(), ...Said }),
    z.object({
      ask: z.literal('pour'),
      pour_c: z.number(),
      change_c: z.number(),
      taken_c: z.array(z.number()).describe('By each thing, in the order given.'),
      ...Said,
    }),
    z.object({ ask: z.literal('ice'), ice_g: z.number(), place: z.literal('outside-the-bath'), ...Said }),
    z.object({
      ask: z.literal('standing'),
      constant: z.object({
        value_s: z.number(),
        low_s: z.number().nullable(),
        high_s: z.number().nullable(),
        ...Sourced,
      }),
      from_c: z.number().nullable(),
      read_again_after_s: z.number().nullable(),
      then_c: z.number().nullable().describe('After `after_s`.'),
      mean_c: z.number().nullable().describe('Over `after_s`.'),
      reached_after_s: z.number().nullable(),
      start_for_mean_c: z.number().nullable(),
      ...Said,
    }),
    z.object({ ask: z.literal('cold'), fixing: Factor, washing: Factor, ...Said }),
    z.object({
      ask: z.literal('baths'),
      refused: z.boolean(),
      outside: z.array(z.number()).describe('Places of baths outside their own window, from 0.'),
      pairs: z.array(
        z.object({ bath: z.number(), other: z.number(), by_c: z.number(), verdict: z.enum(['said', 'refused']) }),
      ),
      chain: z.object({ first: z.number(), last: z.number(), by_c: z.number() }).nullable(),
      ...Said,
    }),
  ])
  .meta({ id: 'TemperAnswer' })

const Tank = z.strictObject({ name: Name, holds_ml: Volume, rolls: z.number() })
const Graduate = z.strictObject({
  kind: z.enum(['graduate', 'syringe']),
  holds_ml: Volume,
  marks_ml: Volume.describe('From mark to mark.'),
})

/** One question about solutions, by `ask`. */
export const DiluteQuestion = z
  .discriminatedUnion('ask', [
    z.strictObject({
      ask: z.literal('ratio'),
      ratio: z.union([z.string().max(40), Parts]).describe('As typed, or parts. 1:4 is answered both ways.'),
      total_ml: Volume.optional(),
      stocks_ml: z.array(Volume.nullable()).max(8).optional().describe('What there is of each part, null for enough.'),
    }),
    z.strictObject({ ask: z.literal('chain'), ratios: z.array(Parts).max(24), total_ml: Volume.optional() }),
    z.strictObject({ ask: z.literal('into'), amount_ml: Volume, volume_ml: Volume }),
    z.strictObject({ ask: z.literal('stock'), stock: Parts, working: Parts, total_ml: Volume }),
    z.strictObject({
      ask: z.literal('blend'),
      strong: Percent,
      weak: Percent.default(0),
      wanted: Percent,
      total_ml: Volume,
    }),
    z.strictObject({
      ask: z.literal('percent'),
      percent: Percent,
      total_ml: Volume,
      density: z.number().optional().describe('g/mL; given, the percentage is by weight.'),
    }),
    z.strictObject({ ask: z.literal('acetic'), from: Percent, wanted: Percent, total_ml: Volume }),
    z.strictObject({
      ask: z.literal('floor'),
      ratio: Parts,
      volume_ml: Volume,
      floor_ml: Volume.describe('Of the first part, each roll.'),
      rolls: z.number(),
      tanks: z.array(Tank).max(64).default([]),
      others: z.array(Parts).max(24).default([]).describe('Other dilutions that the label knows.'),
    }),
    z.strictObject({
      ask: z.literal('measure'),
      volume_ml: Volume,
      graduates: z.array(Graduate).max(64).optional().describe('Left out, what lies about in many darkrooms.'),
    }),
    z.strictObject({ ask: z.literal('drops'), volume_ml: Volume, drops_each: z.number().optional() }),
  ])
  .meta({ id: 'DiluteQuestion' })

const Mixed = z.object({ parts: z.array(z.number()), total_ml: z.number(), volumes_ml: z.array(z.number()) })

export const DiluteAnswer = z
  .discriminatedUnion('ask', [
    z.object({
      ask: z.literal('ratio'),
      readings: z.array(Mixed).describe('One, or both ways of reading a colon; never chosen between.'),
      stronger: z.number().nullable().describe('How much stronger the second reading is than the first.'),
      limited_by: z.number().nullable().describe('The part that runs out first, from 0.'),
      left_ml: z.array(z.number().nullable()).nullable(),
      ...Said,
    }),
    z.object({ ask: z.literal('chain'), mixed: Mixed.nullable(), parts: z.array(z.number()), ...Said }),
    z.object({ ask: z.literal('into'), made_up_to: Mixed, poured_into: Mixed, ...Said }),
    z.object({
      ask: z.literal('stock'),
      factor: z.number(),
      from_concentrate: Mixed,
      from_stock: Mixed,
      ...Said,
    }),
    z.object({ ask: z.literal('blend'), strong_ml: z.number(), weak_ml: z.number(), ...Said }),
    z.object({
      ask: z.literal('percent'),
      by: z.enum(['weight-in-volume', 'weight']),
      dissolved_g: z.number(),
      water_g: z.number().nullable().describe('By weight only; else topped up to the total.'),
      ...Said,
    }),
    z.object({
      ask: z.literal('acetic'),
      acid_g: z.number(),
      acid_ml: z.number(),
      water_g: z.number(),
      mol_per_litre: z.number(),
      ...Said,
    }),
    z.object({
      ask: z.literal('floor'),
      enough: z.boolean(),
      held_ml: z.number(),
      needed_ml: z.number(),
      rolls: z.number(),
      volume_needed_ml: z.number(),
      dilution_needed: z.array(z.number()).nullable(),
      tank: z.string().nullable(),
      other: z.array(z.number()).nullable(),
      fills: z.number().nullable(),
      ...Said,
    }),
    z.object({
      ask: z.literal('measure'),
      by: z.array(
        z.object({
          name: z.string(),
          kind: z.enum(['graduate', 'syringe']),
          fills: z.number(),
          error: z.number().describe('Part of the volume.'),
          too_coarse: z.boolean(),
        }),
      ),
      ...Said,
    }),
    z.object({ ask: z.literal('drops'), drops: z.number(), volume_ml: z.number(), ...Said }),
  ])
  .meta({ id: 'DiluteAnswer' })

export const mixing = {
  'temper-question': TemperQuestion,
  'temper-answer': TemperAnswer,
  'dilute-question': DiluteQuestion,
  'dilute-answer': DiluteAnswer,
}
