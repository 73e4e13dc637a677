import { z } from 'zod'
import { Working } from './common.js'

const ZoneModel = z.enum(['no-flare', 'flare'])

/** What N asks of a negative, and what a series of zones says of one. */
export const ZonesQuestion = z
  .strictObject({
    model: ZoneModel.optional().describe('Left out, both are answered, each for itself.'),
    density_range: z.number().optional().describe('That the paper needs; goes with `model`.'),
    gradient: z.number().optional().describe('Which N this average gradient is.'),
    densities: z.array(z.number()).max(64).optional().describe('Over base and fog, from zone 0 up: judged.'),
    from_zone: z.number().default(1),
    to_zone: z.number().default(8),
  })
  .meta({ id: 'ZonesQuestion' })

/** What N asks of a negative, by each model for itself. */
export const ZonesAnswer = z
  .object({
    models: z.array(
      z.object({
        model: ZoneModel,
        normal_stops: z.number(),
        density_range: z.number(),
        flare: z.number(),
        rows: z.array(z.object({ n: z.number(), stops: z.number(), gradient: z.number() })),
      }),
    ),
    read: z
      .object({ speed_met: z.boolean(), gradient: z.number(), from_zone: z.number(), to_zone: z.number() })
      .nullable(),
    sentences: z.array(z.string()),
    working: Working,
  })
  .meta({ id: 'ZonesAnswer' })

/** A subject, a negative and a paper, as far as they are known. */
export const RangeQuestion = z
  .strictObject({
    subject: z.number().optional().describe('Lightest to darkest, as a ratio.'),
    flare: z.number().default(0).describe('In times the darkest light.'),
    gradient: z.number().optional().describe('Average gradient of the negative.'),
    from_density: z.number().optional().describe('Over base and fog; goes with `to_density` and `gradient`.'),
    to_density: z.number().optional(),
    paper_gradient: z.number().optional(),
  })
  .meta({ id: 'RangeQuestion' })

/** How the range of a subject goes through lens, film and paper. */
export const RangeAnswer = z
  .object({
    at_film: z.object({ ratio: z.number(), log_range: z.number(), lost: z.number() }).nullable(),
    room: z.object({ log_range: z.number(), stops: z.number() }).nullable(),
    density_range: z.number().nullable(),
    paper_grade: z.number().nullable(),
    print_gradient: z.number().nullable(),
    sentences: z.array(z.string()),
    working: Working,
  })
  .meta({ id: 'RangeAnswer' })
