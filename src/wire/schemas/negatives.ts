import { z } from 'zod'
import { Duration, Working } from './common.js'
import { WarningBody } from './times.js'
import { RangeAnswer, RangeQuestion, ZonesAnswer, ZonesQuestion } from './tones.js'

const Density = z.number().min(0).max(6)
const TabletName = z.enum(['21-step', '11-step', '31-step'])
const Known = z.strictObject({ read: z.number(), true: z.number() })
const BaseFog = z.strictObject({ density: Density, readings: z.int().min(1).max(1000).default(1) })

/** A measure read off a curve; one that is not defined has no value, and says why. */
const Figure = z.object({
  name: z.string(),
  says: z.string(),
  value: z.number().nullable(),
  low: z.number().nullable(),
  high: z.number().nullable(),
  undefined_because: z.string().nullable(),
})
const NamedSpeed = z.object({ arithmetic: z.number(), degrees: z.number(), name: z.string() })

/** A strip of densities behind a tablet (`tablet` and `densities`), or with their log exposures (`steps`). */
export const StripQuestion = z
  .strictObject({
    tablet: z.union([TabletName, z.array(Density).max(64)]).optional(),
    lamp_log_exposure: z.number().optional().describe('log10 lux-seconds without the tablet.'),
    densities: z.array(z.number()).max(64).optional().describe('In the order of the tablet’s steps.'),
    steps: z
      .array(z.strictObject({ log_exposure: z.number(), density: z.number() }))
      .max(64)
      .optional(),
    exposure: z.enum(['lux-seconds', 'relative']).default('relative').describe('Of `steps`.'),
    base_fog: BaseFog.optional(),
    reading_error: z.number().optional(),
    strip_scatter: z.number().optional(),
    known: z.array(Known).max(64).default([]).describe('Known densities by which a scanner is put right.'),
  })
  .meta({ id: 'StripQuestion' })

export const StripAnswer = z
  .object({
    base_fog: z.number(),
    from_log_exposure: z.number(),
    to_log_exposure: z.number(),
    exposure: z.enum(['lux-seconds', 'relative']),
    reading_error: z.number(),
    speed: z.object({
      kind: z.enum(['iso', 'delta-x']).nullable().describe('Null: no speed, see undefined_because.'),
      label: z.string().nullable(),
      named: NamedSpeed.nullable(),
      value: z.number().nullable(),
      low: z.number().nullable(),
      high: z.number().nullable(),
      sure: z.boolean(),
      not_iso_because: z.string().nullable(),
      undefined_because: z.string().nullable(),
    }),
    figures: z.array(Figure),
    warnings: z.array(WarningBody),
    sentence: z.string(),
    working: Working,
  })
  .meta({ id: 'StripAnswer' })

const Setting = z.strictObject({ aperture: z.number(), time_s: z.number() })

/** Frames of a grey card in the camera, each a few stops under the meter. */
export const IndexQuestion = z
  .strictObject({
    index: z.number().describe('The index that the meter was set to.'),
    meter: Setting,
    stops_under: z.number().default(0),
    stop_fraction: z.union([z.literal(1), z.literal(2), z.literal(3)]).default(2),
    frames: z
      .array(Setting.extend({ net_density: z.number().optional() }))
      .min(1)
      .max(36),
    reading_error: z.number().optional(),
  })
  .meta({ id: 'IndexQuestion' })

export const IndexAnswer = z
  .object({
    frames: z.array(
      z.object({ aperture: z.number(), time_s: z.number(), index: z.number(), net_density: z.number().nullable() }),
    ),
    own: z.object({ index: z.number(), low: z.number(), high: z.number(), named: NamedSpeed }).nullable(),
    undefined_because: z.string().nullable(),
    sentence: z.string(),
    working: Working,
  })
  .meta({ id: 'IndexAnswer' })

/** What an enlarger matched and what a scanner read. */
export const DensityQuestion = z
  .strictObject({
    enlarger: z
      .array(z.strictObject({ blank_s: z.number(), matched_s: z.number() }))
      .max(64)
      .default([])
      .describe('Seconds for one mid grey, through blank film and through the film.'),
    read: z.array(z.number()).max(64).default([]).describe('Densities as a scanner reads them.'),
    known: z.array(Known).max(64).default([]).describe('Known densities by which the scanner is put right.'),
  })
  .meta({ id: 'DensityQuestion' })

/** Densities without a densitometer. */
export const DensityAnswer = z
  .object({
    densities: z.array(
      z.object({ read: z.string(), density: z.number(), standard_error: z.number(), basis: z.string() }),
    ),
    sentences: z.array(z.string()),
    working: Working,
  })
  .meta({ id: 'DensityAnswer' })

const ContrastMeasure = z.enum([
  'iso-triangle',
  'g-bar',
  'g-bar-chord',
  'contrast-index-short',
  'radiographic',
  'contrast-index',
  'gamma',
])

/** Strips developed for several times: the contrast of each, or its steps to read it off. */
export const ContrastQuestion = z
  .strictObject({
    wanted: z.number(),
    measure: ContrastMeasure.default('g-bar'),
    scatter: z.number().optional().describe('One’s own standard deviation of contrast from strip to strip.'),
    contrasts: z
      .array(z.strictObject({ time_s: Duration, contrast: z.number(), standard_error: z.number().default(0) }))
      .max(24)
      .optional(),
    strips: z
      .array(z.strictObject({ time_s: Duration, strip: StripQuestion }))
      .max(24)
      .optional(),
    appearance: z
      .strictObject({ time_s: z.number(), factor: z.number() })
      .optional()
      .describe('Time of appearance and Watkins factor, to check the answer by.'),
  })
  .meta({ id: 'ContrastQuestion' })

export const ContrastAnswer = z
  .object({
    wanted: z.number(),
    measure: ContrastMeasure.nullable().describe('Null: contrasts were given, by a measure not named.'),
    time_s: z.number(),
    low_s: z.number().nullable(),
    high_s: z.number().nullable(),
    law: z.object({ most: z.number(), rate_per_s: z.number(), start_s: z.number() }),
    method: z.enum(['two-strips', 'assumed-start', 'least-squares']),
    scatter: z.object({ value: z.number(), origin: z.enum(['assumption', 'measured']) }),
    strips: z.array(z.object({ time_s: z.number(), contrast: z.number(), misfit: z.number() })),
    base_fog: z.number().nullable(),
    speed: z
      .object({ value: z.number(), low: z.number().nullable(), high: z.number().nullable(), named: NamedSpeed })
      .nullable(),
    watkins_s: z.number().nullable(),
    warnings: z.array(WarningBody),
    sentence: z.string(),
    working: Working,
  })
  .meta({ id: 'ContrastAnswer' })

const Quantity = z.enum(['base-fog', 'speed-step', 'contrast'])

/** Control strips in order of time: their quantities, or every step of each (`steps`). */
export const ControlQuestion = z
  .strictObject({
    limits: z.enum(['small-lab', 'regulation']).default('small-lab'),
    strips: z
      .array(
        z.strictObject({
          label: z.string().max(120).default(''),
          base_fog: Density,
          speed_step: z.number().optional(),
          contrast: z.number().optional(),
          densities: z.array(z.number()).max(64).optional(),
        }),
      )
      .min(1)
      .max(2000),
    steps: z.enum(['film', 'radiograph']).optional().describe('Choose the steps of `densities` to watch.'),
    aims: z.partialRecord(Quantity, z.number()).default({}).describe('Default: the mean of the first five strips.'),
    second: z.partialRecord(Quantity, z.number()).default({}).describe('What a second strip read.'),
  })
  .meta({ id: 'ControlQuestion' })

export const ControlAnswer = z
  .object({
    charts: z.array(
      z.object({
        quantity: Quantity,
        aim: z.number(),
        limits: z.object({ lower: z.number().nullable(), upper: z.number(), warning: z.number().nullable() }),
        deviations: z.array(z.number()),
        individuals: z
          .object({ lower: z.number().nullable(), upper: z.number(), deviation: z.number(), outside: z.array(z.int()) })
          .nullable(),
        ewma: z
          .object({
            averages: z.array(z.number()),
            lower: z.number().nullable(),
            upper: z.number(),
            outside: z.array(z.int()),
          })
          .nullable(),
        rules: z.array(z.object({ rule: z.string(), at: z.int(), rising: z.boolean() })),
        verdict: z.enum(['leave-alone', 'watch', 'trend', 'second-strip', 'stop', 'first-strip-wrong']),
        sentence: z.string(),
      }),
    ),
    act: z.boolean(),
    sentence: z.string(),
    working: Working,
  })
  .meta({ id: 'ControlAnswer' })

/** Pairs to fit a named curve to. */
export const FitQuestion = z
  .strictObject({
    curve: z.enum(['line', 'rise', 'peak', 'quotient', 'cubics']),
    points: z.array(z.tuple([z.number(), z.number()])).max(2000),
    start: z.array(z.number()).max(8).optional(),
  })
  .meta({ id: 'FitQuestion' })

export const FitAnswer = z
  .object({
    curve: z.string(),
    value: z.array(z.number()),
    standard_errors: z.array(z.number()).nullable(),
    covariance: z.array(z.array(z.number())).nullable(),
    residuals: z.array(z.number()),
    sum_of_squares: z.number(),
    scatter: z.number().nullable(),
    degrees_of_freedom: z.int(),
    stopped: z.string(),
    iterations: z.int(),
    evaluations: z.int(),
    sentence: z.string(),
    working: Working,
  })
  .meta({ id: 'FitAnswer' })

/** Questions and answers of commands about negatives, by the names they are published under. */
export const negatives = {
  'strip-question': StripQuestion,
  'strip-answer': StripAnswer,
  'index-question': IndexQuestion,
  'index-answer': IndexAnswer,
  'density-question': DensityQuestion,
  'density-answer': DensityAnswer,
  'contrast-question': ContrastQuestion,
  'contrast-answer': ContrastAnswer,
  'zones-question': ZonesQuestion,
  'zones-answer': ZonesAnswer,
  'range-question': RangeQuestion,
  'range-answer': RangeAnswer,
  'control-question': ControlQuestion,
  'control-answer': ControlAnswer,
  'fit-question': FitQuestion,
  'fit-answer': FitAnswer,
}
