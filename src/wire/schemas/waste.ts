import { z } from 'zod'
import { FixQuestion } from './baths.js'
import { Duration, Temperature, Working } from './common.js'

const Volume = z.number().describe('millilitres')
const Band = z.object({ low: z.number(), usual: z.number(), high: z.number() })

const WashStep = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('change'),
    volume_ml: Volume,
    time_s: Duration,
    moved: z.boolean().default(true).describe('False where the water stood; its time counts for no diffusion then.'),
  }),
  z.strictObject({ kind: z.literal('running'), volume_ml: Volume, time_s: Duration, ml_per_min: z.number() }),
])
const Scheme = z.enum(['changes', 'running', 'after-aid'])

/** A wash. Without what the fixer was found to be (`after`) there is an estimate and no verdict. */
export const WashQuestion = z
  .strictObject({
    after: FixQuestion.pick({ clearing: true, bath: true }).optional(),
    steps: z.array(WashStep).max(60),
    fixer_g_per_l: z.number().default(110).describe('Thiosulfate ion; assumed when left out.'),
    rolls: z.number().default(1),
    temperature_c: Temperature.default(20),
    rinse: z.enum(['nothing', 'walls', 'film-and-walls']).default('nothing'),
    hardened: z.boolean().default(false),
    wash_aid: z.boolean().default(false),
    half_life_s: Duration.optional(),
    wet: z
      .strictObject({ emulsion_ml: Volume, surface_ml: Volume, walls_ml: Volume })
      .optional()
      .describe('Fixer that a roll holds in its gelatin and on it, and the tank on its walls.'),
    tests: z
      .array(
        z.strictObject({
          test: z.enum(['residual-hypo', 'residual-silver']),
          passed: z.boolean(),
          scheme: Scheme,
          time_s: Duration,
          changes: z.number().default(0),
          temperature_c: Temperature,
          water_ml_per_roll: Volume,
          hardened: z.boolean().default(false),
        }),
      )
      .max(500)
      .default([]),
  })
  .meta({ id: 'WashQuestion' })

const LeftBy = z.object({ mg_per_roll: z.number(), part: z.number() })

export const WashAnswer = z
  .object({
    residue_g_per_m2: z.number().describe('An estimate.'),
    mg_per_roll: z.number(),
    limit_g_per_m2: z.number(),
    margin: z.number().describe('The limit over the residue.'),
    left: z.object({ water: LeftBy, diffusion: LeftBy }),
    slower: z.enum(['water', 'diffusion']),
    scheme: Scheme,
    water_ml: z.number(),
    time_s: z.number(),
    half_life_s: z.number(),
    diffusion_needs_s: z.number(),
    factors: z.array(z.object({ name: z.enum(['cold', 'hardener', 'wash-aid']), factor: z.number() })),
    floor: z.object({ time_s: z.number(), changes: z.number(), met: z.boolean(), by_own_test: z.boolean() }),
    verdict: z.enum(['enough', 'longer', 'cannot-be-judged']),
    because: z
      .enum(['clearing-doubled', 'count-used', 'silver-loaded', 'fixer-unknown', 'silver-left-in-film'])
      .nullable(),
    sentences: z.array(z.string()),
    working: Working,
  })
  .meta({ id: 'WashAnswer' })

/** What was poured into a waste jug: by rolls, by a reading, or without silver. */
export const SilverQuestion = z
  .strictObject({
    pours: z
      .array(
        z.discriminatedUnion('by', [
          z.strictObject({
            by: z.literal('rolls'),
            volume_ml: Volume,
            rolls: z.number(),
            silver: z.strictObject({ g_per_m2: z.number(), share: z.number() }).optional(),
          }),
          z.strictObject({
            by: z.literal('reading'),
            volume_ml: Volume,
            g_per_l: z.number(),
            off_by_g_per_l: z.number().default(0),
          }),
          z.strictObject({ by: z.literal('none'), volume_ml: Volume }),
        ]),
      )
      .max(10_000),
    own_limit_mg_per_l: z.number().optional(),
  })
  .meta({ id: 'SilverQuestion' })

const Against = z.object({ limit_mg_per_l: z.number(), says: z.enum(['above', 'in-doubt', 'below']) })

export const SilverAnswer = z
  .object({
    volume_ml: z.number(),
    silver_rich_ml: z.number(),
    grams: Band,
    g_per_l: Band,
    undiluted_mg_per_l: Band.describe('As if nothing without silver had been poured in.'),
    rule: Against,
    own: Against.nullable(),
    origin: z.enum(['measured', 'assumption']),
    sentences: z.array(z.string()),
    working: Working,
  })
  .meta({ id: 'SilverAnswer' })

/** Acid poured on a sulfite bath, on paper: never do it. */
export const FumesQuestion = z
  .strictObject({
    sulfite_g_per_l: z.number().describe('Anhydrous sodium sulfite.'),
    bath_ml: Volume.default(1000),
    acid_percent: z.number().default(5).describe('Grams of acetic acid in 100 mL; vinegar when left out.'),
    acid_ml: Volume,
    room_m3: z.number().default(10),
  })
  .meta({ id: 'FumesQuestion' })

export const FumesAnswer = z
  .object({
    before: z.object({ ph: z.number(), sulfur_dioxide: z.number().describe('Part of the sulfite.') }),
    after: z.object({ ph: z.number(), sulfur_dioxide: z.number() }),
    gas_g: z.number(),
    ppm: z.number().describe('In the air of the room, nothing blown out.'),
    whole_g: z.number().describe('If all of the sulfite became gas; more forms as it leaves.'),
    whole_ppm: z.number(),
    limits_ppm: z.object({ shift: z.number(), quarter_hour: z.number(), dangerous: z.number() }),
    fan_m3_per_h: z.number(),
    sentences: z.array(z.string()),
    working: Working,
  })
  .meta({ id: 'FumesAnswer' })

/** Published in docs/schemas by these names. */
export const waste = {
  'wash-question': WashQuestion,
  'wash-answer': WashAnswer,
  'silver-question': SilverQuestion,
  'silver-answer': SilverAnswer,
  'fumes-question': FumesQuestion,
  'fumes-answer': FumesAnswer,
}
