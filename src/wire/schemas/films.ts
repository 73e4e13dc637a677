import { z } from 'zod'
import { InSeconds } from './branded.js'
import { Id, InstantText, Name, Note, Revision, Seen } from './common.js'
import { FilmProcess, RollRemark } from './rolls.js'

/** How far from its own time a film may be developed; in contrast where a law of contrast in time is known. */
const Tolerance = z
  .discriminatedUnion('in', [
    z.strictObject({ in: z.literal('percent'), down: z.number().min(0).max(50), up: z.number().min(0).max(100) }),
    z.strictObject({ in: z.literal('contrast'), down: z.number().min(0).max(0.5), up: z.number().min(0).max(0.5) }),
  ])
  .meta({ id: 'FilmTolerance' })

export const FilmStatement = z
  .strictObject({
    name: Name,
    process: FilmProcess,
    tolerance: Tolerance.default({ in: 'percent', down: 10, up: 10 }),
    strips: z
      .array(z.strictObject({ time_s: InSeconds, contrast: z.number().min(0.02).max(6) }))
      .max(24)
      .optional()
      .describe('Strips of this film: by their law a tolerance in contrast becomes one in time.'),
    fixing: z.enum(['ordinary', 'fast-using']).default('ordinary'),
    remarks: z.array(RollRemark).max(5).default([]),
    drying_s: z.number().min(600).max(172_800).nullable().default(null),
    keeping: Note.default(''),
    note: Note.default(''),
  })
  .meta({ id: 'FilmStatement' })
export const FilmRecord = FilmStatement.extend({
  id: Id,
  revision: Revision,
  saved_at: InstantText,
  removed: z.boolean(),
}).meta({ id: 'FilmRecord' })
export const FilmRecords = z.object({ films: z.array(FilmRecord) }).meta({ id: 'FilmRecords' })
export const AddFilm = FilmStatement.meta({ id: 'AddFilm' })
export const CorrectFilm = Seen.extend({ statement: FilmStatement }).meta({ id: 'CorrectFilm' })
