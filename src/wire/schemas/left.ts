import { z } from 'zod'
import { InstantText } from './common.js'

/** What may end a bath: its volume, counted rolls, silver, clearing tests, acid, or its age. */
export const LeftEnd = z.enum(['volume', 'count', 'silver', 'tests', 'acid', 'age'])
const Origin = z.enum(['measured', 'sheet', 'law', 'practice', 'assumption'])

const Limit = z.object({
  by: LeftEnd,
  rolls: z.number().nullable().describe('Ordinary rolls left; null for age.'),
  days: z.number().nullable(),
  part: z.number().describe('Of the whole, 0 to 1.'),
  ends: InstantText.nullable().describe('When, at the present pace; null where no pace is known.'),
  origin: Origin,
  source: z.string(),
})

/** What a lot in a bottle can still do. The least decides and is named. */
export const LeftView = z
  .object({
    limits: z.array(Limit),
    decides: LeftEnd.nullable(),
    rolls: z.number().nullable().describe('Ordinary rolls, the least of those limits that are counted in rolls.'),
    days: z.number().nullable(),
    part: z.number().nullable(),
    ends: InstantText.nullable(),
    whole: z
      .object({ ordinary: z.int(), tabular: z.int(), 'high-iodide': z.int() })
      .nullable()
      .describe('Whole rolls of each family, either or.'),
    met: z.number().describe('Rolls that it met since it was fresh.'),
    rolls_per_week: z.number().nullable().describe('The present pace.'),
    silver_g_per_l: z.object({ low: z.number(), usual: z.number(), high: z.number() }).nullable(),
    clearing: z
      .object({ fresh_s: z.number(), now_s: z.number(), fix_for_s: z.number(), finished: z.boolean() })
      .nullable(),
    state: z.enum(['usable', 'finished', 'unknown']),
    next_time_factor: z.number().nullable().describe('On the developing time, where each roll lengthens the next.'),
    due_ml: z.number().nullable().describe('Replenisher that is due.'),
  })
  .meta({ id: 'LeftView' })
