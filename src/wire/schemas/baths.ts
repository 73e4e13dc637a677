import { z } from 'zod'
import { Duration, Working } from './common.js'

const Family = z.enum(['ordinary', 'tabular', 'high-iodide'])
const FixerKind = z.enum(['sodium-thiosulfate', 'ammonium-thiosulfate'])
const FillState = z.enum(['full', 'half-full', 'tray', 'tank'])
const StopAcid = z.enum(['acetic', 'citric'])
const Volume = z.number().describe('millilitres')

/** Film of one format: `135` with its frames, `120`, `4x5`, `9x12cm`. */
const Film = z.strictObject({
  format: z.string().max(20),
  frames: z.number().optional().describe('Of a 135 length; 36 when left out.'),
  count: z.number().default(1).describe('Rolls or sheets.'),
})

/** Film to be counted in rolls. */
export const RollsQuestion = z.strictObject({ film: z.array(Film).max(200) }).meta({ id: 'RollsQuestion' })

export const RollsAnswer = z
  .object({
    exact: z.number().describe('Rolls by the convention, with their fractions.'),
    tally: z.number().describe('Whole rolls, a begun one counting as one.'),
    area_cm2: z.number(),
    rolls_by_area: z.number().describe('If area alone counted, ends of rolls included.'),
    pieces: z.array(
      z.object({
        name: z.string(),
        count: z.number(),
        rolls_each: z.number(),
        rolls: z.number(),
        by: z.enum(['convention', 'frames', 'area']),
        area_cm2: z.number(),
      }),
    ),
    sentences: z.array(z.string()),
    working: Working,
  })
  .meta({ id: 'RollsAnswer' })

const FixedFilm = Film.extend({
  family: Family.default('ordinary'),
  capacity: z.number().optional().describe('Part of the ordinary count that a bath carries of it, from its label.'),
})

/** A fixer in use: any of a clearing test, the bath and what it met, and the first of two baths. */
export const FixQuestion = z
  .strictObject({
    clearing: z.strictObject({ fresh_s: Duration, now_s: Duration, family: Family.default('ordinary') }).optional(),
    bath: z
      .strictObject({
        kind: FixerKind.default('ammonium-thiosulfate'),
        volume_ml: Volume.describe('As it was mixed.'),
        rolls_per_litre: z.number().default(20),
        film: z.array(FixedFilm).max(1000).default([]),
        silver_limit_g_per_l: z.number().optional(),
        silver: z.strictObject({ g_per_m2: z.number(), share: z.number() }).optional(),
        tests: z
          .strictObject({
            fresh_s: Duration,
            made: z.array(z.strictObject({ rolls: z.number(), clearing_s: Duration })).max(500),
          })
          .optional(),
        bottle: z
          .strictObject({ holds_ml: Volume, fill_ml: Volume, rolls_per_fill: z.number().default(1), lost_ml: Volume })
          .optional(),
      })
      .optional(),
    first_bath: z
      .array(z.strictObject({ done: z.number(), capacity: z.number() }))
      .max(100)
      .optional(),
  })
  .meta({ id: 'FixQuestion' })

const Band = z.object({ low: z.number(), usual: z.number(), high: z.number() })

export const FixAnswer = z
  .object({
    clearing: z
      .object({
        fix_for_s: z.number(),
        grown: z.number().describe('Clearing time now over fresh; 2 is the end.'),
        verdict: z.enum(['usable', 'finished']),
        finished_at_s: z.number(),
      })
      .nullable(),
    left: z
      .object({
        rolls: z.object({ ordinary: z.number(), tabular: z.number(), 'high-iodide': z.number() }),
        decides: z.enum(['count', 'silver', 'tests', 'volume']),
        by: z.object({
          count: z.number().nullable(),
          silver: z.number().nullable(),
          tests: z.number().nullable(),
          volume: z.number().nullable(),
        }),
        taken: z.number(),
        carries: z.number(),
        silver_g_per_l: Band,
        silver_limit_g_per_l: z.number(),
        trend: z
          .object({
            ends_at_rolls: z.number(),
            low: z.number().nullable(),
            high: z.number().nullable(),
            tests: z.number(),
          })
          .nullable(),
      })
      .nullable(),
    two_baths: z
      .object({
        used: z.number(),
        verdict: z.enum(['carry-on', 'rotate']),
        because: z.array(z.enum(['count', 'clearing'])),
        left: z.array(z.number()),
      })
      .nullable(),
    sentences: z.array(z.string()),
    working: Working,
  })
  .meta({ id: 'FixAnswer' })

const Lives = z.strictObject({
  full: z.number().optional(),
  'half-full': z.number().optional(),
  tray: z.number().optional(),
  tank: z.number().optional(),
})

/** How a solution stood, in order; the last stretch is how it stands now. */
export const LifeQuestion = z
  .strictObject({
    stretches: z.array(z.strictObject({ state: FillState, days: z.number() })).max(1000),
    keeps: z
      .enum(['stock-developer', 'working-developer', 'stop', 'fixer', 'opened-concentrate'])
      .optional()
      .describe('Whose days by common practice are taken.'),
    days: Lives.default({}).describe('From the label or your own record; these go before practice.'),
  })
  .meta({ id: 'LifeQuestion' })

export const LifeAnswer = z
  .object({
    used: z.number().describe('0 fresh, 1 at the end of its life.'),
    days_left: z.number().describe('As it stands now.'),
    verdict: z.enum(['keeps', 'past']),
    stretches: z.array(z.object({ state: FillState, days: z.number(), life_days: z.number(), used: z.number() })),
    sentences: z.array(z.string()),
    working: Working,
  })
  .meta({ id: 'LifeAnswer' })

/** One thing in a bath that is topped up after each roll; a book of volumes besides or alone. */
export const ReplenishQuestion = z
  .strictObject({
    bath: z
      .strictObject({
        volume_ml: Volume,
        rate_ml: Volume.describe('Replaced a roll.'),
        per_roll_g: z.number().describe('Released by a roll; below zero what it uses up.'),
        replenisher_g_per_l: z.number().default(0),
        start_g_per_l: z.number().default(0),
        rolls: z.number().optional(),
        within: z.number().default(0.05).describe('Part of the way to the plateau that may be left.'),
      })
      .optional(),
    book: z
      .strictObject({
        start_ml: Volume,
        entries: z
          .array(
            z.strictObject({
              added_ml: Volume.default(0),
              discarded_ml: Volume.default(0),
              carried_out_ml: Volume.default(0),
            }),
          )
          .max(20_000),
      })
      .optional(),
  })
  .meta({ id: 'ReplenishQuestion' })

export const ReplenishAnswer = z
  .object({
    bath: z
      .object({
        before_topping_g_per_l: z.number(),
        after_topping_g_per_l: z.number(),
        rolls_to_plateau: z.number(),
        after_rolls_g_per_l: z.number().nullable(),
      })
      .nullable(),
    book: z
      .object({ volume_ml: z.number(), added_ml: z.number(), discarded_ml: z.number(), carried_out_ml: z.number() })
      .nullable(),
    sentences: z.array(z.string()),
    working: Working,
  })
  .meta({ id: 'ReplenishAnswer' })

/** A stop bath in use; or only what stands before and after it. */
export const StopQuestion = z
  .strictObject({
    bath: z
      .strictObject({
        volume_ml: Volume.describe('As it was mixed.'),
        percent: z.number().describe('Grams of acid in 100 mL.'),
        acid: StopAcid.default('acetic'),
        rolls: z.number().default(0),
        published_rolls_per_litre: z.number().optional(),
        carried_ml: Volume.default(20),
        alkali_mol_per_l: z.number().default(0.25),
      })
      .optional(),
    between: z
      .strictObject({
        developer: z.enum(['ordinary', 'staining', 'strong-carbonate']).default('ordinary'),
        fixer: z.enum(['acid', 'alkaline']).default('acid'),
      })
      .optional(),
  })
  .meta({ id: 'StopQuestion' })

export const StopAnswer = z
  .object({
    bath: z
      .object({
        takes_mol: z.number(),
        rolls_to_turning: z.number(),
        rolls_to_purple: z.number(),
        rolls_published: z.number().nullable(),
        decides: z.enum(['acid', 'published']),
        left: z.number(),
      })
      .nullable(),
    stop: z.enum(['acid', 'water']).nullable(),
    sentences: z.array(z.string()),
    working: Working,
  })
  .meta({ id: 'StopAnswer' })

/** Published in docs/schemas by these names. */
export const baths = {
  'rolls-question': RollsQuestion,
  'rolls-answer': RollsAnswer,
  'fix-question': FixQuestion,
  'fix-answer': FixAnswer,
  'life-question': LifeQuestion,
  'life-answer': LifeAnswer,
  'replenish-question': ReplenishQuestion,
  'replenish-answer': ReplenishAnswer,
  'stop-question': StopQuestion,
  'stop-answer': StopAnswer,
}
