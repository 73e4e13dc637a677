import { z } from 'zod'
import { Duration, Id, InstantText, Name, Note, Revision, Temperature, Text, Working } from './common.js'

export const SheetPoint = z.strictObject({ temperature_c: Temperature, time_s: Duration }).meta({ id: 'SheetPoint' })
export const TemperatureRange = z
  .strictObject({ from_c: Temperature, to_c: Temperature })
  .meta({ id: 'TemperatureRange' })

export const DeveloperKind = z.enum(['ordinary', 'single-bath', 'fixed'])
export const RateLaw = z.enum(['exponential', 'arrhenius'])
export const DeveloperClass = z.enum([
  'unknown',
  'metol',
  'hydroquinone',
  'metol-hydroquinone',
  'phenidone-ascorbate',
  'pyro',
  'glycin',
  'p-aminophenol',
])

/** What a person states about one film in one developer. */
export const TimeStatement = z
  .strictObject({
    film: Name,
    exposure_index: z.int().min(1).max(25_600).nullable().default(null),
    developer: Name,
    dilution_parts: z
      .array(z.number().positive().max(1000))
      .min(1)
      .max(4)
      .nullable()
      .default(null)
      .describe('1 + 4 is [1, 4]; undiluted is [1].'),
    agitation: Text(200).default(''),
    kind: DeveloperKind.default('ordinary'),
    law: RateLaw.default('exponential'),
    developer_class: DeveloperClass.default('unknown'),
    coefficient: z.number().nullable().default(null).describe('The developer’s own ten-degree coefficient K.'),
    usable: TemperatureRange.nullable().default(null),
    window: TemperatureRange.nullable().default(null).describe('Colour and reversal first developers only.'),
    points: z.array(SheetPoint).max(100),
    source_words: Text(500).default('').describe('The words of the source: “sheet of March 2025, page 2”.'),
    source_origin: z.enum(['sheet', 'own-note', 'measured']).default('sheet'),
    note: Note.default(''),
  })
  .meta({ id: 'TimeStatement' })

export const TimeRecord = TimeStatement.extend({
  id: Id,
  revision: Revision,
  saved_at: InstantText,
  removed: z.boolean(),
}).meta({ id: 'TimeRecord' })

export const TimeRecords = z.object({ times: z.array(TimeRecord) }).meta({ id: 'TimeRecords' })
export const KeepTimes = z.strictObject({ times: z.array(TimeStatement).min(1).max(200) }).meta({ id: 'KeepTimes' })
export const CorrectTime = z
  .strictObject({ seen_revision: Revision, statement: TimeStatement })
  .meta({ id: 'CorrectTime' })

/** A number as a query string has it. Nothing else becomes one: an empty `at_c=` is not 0 °C. */
const QueryNumber = z.preprocess(
  (text) => (typeof text === 'string' && /^[-+]?\d+(\.\d+)?$/.test(text) ? Number(text) : text),
  z.number(),
)

export const TimeQuery = z.strictObject({
  at_c: QueryNumber.pipe(Temperature).describe('Temperature of the developer, °C.'),
  thermometer_error_c: QueryNumber.pipe(z.number().min(0).max(5)).optional(),
  thermometer_id: Id.optional().describe('Corrects at_c by what is known of this thermometer.'),
  factor: QueryNumber.optional().describe('One further factor on the time, such as 1.10 for a second use.'),
})

export const FactorBody = z.object({
  name: z.string(),
  factor: z.number(),
  origin: z.string(),
  note: z.string().optional(),
})
export const WarningBody = z.object({ code: z.string(), sentence: z.string() })

/** The answer to “how long at this temperature”. Its schema is published for `--json` too. */
export const TimeAnswer = z
  .object({
    temperature_c: z.number(),
    time_s: z.number(),
    reference: SheetPoint,
    position: z.enum(['sheet-point', 'between', 'beyond-cold', 'beyond-warm', 'fixed']),
    law: RateLaw,
    factors: z.array(FactorBody),
    band: z.object({
      by_sheet_and_law_s: z.number(),
      by_thermometer_s: z.number(),
      thermometer_error_c: z.number(),
    }),
    warnings: z.array(WarningBody),
    sentence: z.string(),
    working: Working,
  })
  .meta({ id: 'TimeAnswer' })

export const PastedText = z.strictObject({ text: z.string().max(100_000) }).meta({ id: 'PastedText' })

/** How a pasted table was read, line by line, before anything is kept. */
export const PastedReading = z
  .object({
    lines: z.array(
      z.object({
        number: z.int(),
        text: z.string(),
        read_as: z.string().nullable(),
        trouble: z.array(z.object({ cell: z.string(), sentence: z.string() })),
      }),
    ),
    times: z.array(TimeStatement.extend({ film: z.string().max(120), developer: z.string().max(120) })),
    count: z.int().describe('How many single times were read.'),
  })
  .meta({ id: 'PastedReading' })
