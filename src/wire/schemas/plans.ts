import { z } from 'zod'
import { DegreesCelsius, InMillilitres, InSeconds, Token } from './branded.js'
import { Id, Name, Note, Revision, Text } from './common.js'
import { Amount } from './containers.js'
import { Origin, Recipe } from './recipes.js'
import { MetFilm } from './shelf.js'
import { DeveloperClass, DeveloperKind, RateLaw } from './times.js'

/** `A`, `B`: short, told by voice. */
export const TankName = Text(12).trim().min(1)

const SheetPoint = z.strictObject({ temperature: DegreesCelsius, time: InSeconds })
const Range = z.strictObject({ from: DegreesCelsius, to: DegreesCelsius })
/** What a developing time rests on, as it stood when the run was planned. */
export const Basis = z
  .strictObject({
    kind: DeveloperKind,
    law: RateLaw,
    points: z.array(SheetPoint).min(1).max(100),
    developerClass: DeveloperClass,
    coefficient: z.strictObject({ value: z.number(), low: z.number(), high: z.number(), origin: Origin }),
    usable: Range,
    window: Range.nullable(),
    reference: SheetPoint,
  })
  .meta({ id: 'TimeBasis' })

const Modifier = z.strictObject({
  name: z.enum(['agitation', 'pre-wet', 'repeat-use', 'push-pull', 'own-strips', 'other']),
  factor: z.number().min(0.2).max(5),
  origin: Origin,
  note: Text(200).optional(),
})
const Course = z.array(z.strictObject({ at: InSeconds, temperature: DegreesCelsius })).max(200)

const atTemperature = {
  modifiers: z.array(Modifier).max(10).optional(),
  temperature: DegreesCelsius,
  course: Course.optional(),
}
const OwnTime = z.strictObject({ from: z.literal('own'), time: InSeconds, temperature: DegreesCelsius.nullable() })
const Development = z.discriminatedUnion('from', [
  z.strictObject({ from: z.literal('basis'), basis: Basis, ...atTemperature }),
  OwnTime,
])
/** How long to develop, as it is asked: by a kept developing time, or the person's own figure. */
const AskedDevelopment = z.discriminatedUnion('from', [
  z.strictObject({ from: z.literal('kept'), time_id: Id, ...atTemperature }),
  OwnTime,
  z.strictObject({ from: z.literal('shared'), temperature: DegreesCelsius }).describe('One time for mixed films.'),
])

const conditions = {
  tank: TankName,
  offset: InSeconds.optional(),
  temperatures: z.record(Token, DegreesCelsius).optional(),
  room: z.strictObject({ temperature: DegreesCelsius, timeConstant: InSeconds }).nullable().optional(),
  volume: InMillilitres.nullable().optional(),
  clearing: InSeconds.nullable().optional(),
  checks: z.array(InSeconds).max(100).optional(),
  overridesSpread: z.boolean().optional(),
}
export const TankConditions = z
  .strictObject({ ...conditions, development: Development.nullable() })
  .meta({ id: 'TankConditions' })
const AskedConditions = z
  .strictObject({ ...conditions, development: AskedDevelopment.nullable() })
  .meta({ id: 'AskedConditions' })

const onReel = {
  exposure_index: z.int().min(1).max(25_600).nullable().default(null),
  label: Text(120).default(''),
  reel: z
    .int()
    .min(1)
    .max(40)
    .optional()
    .describe('Which reel, from 1; what shares a reel is told from its middle outwards.'),
}
/** What is in a tank: a roll of the register, or a film by its name, for which a label is enough. */
export const OnReel = z
  .strictObject({
    film: Name,
    ...onReel,
    roll: z.strictObject({ roll_id: Id, number: z.string() }).optional(),
    wants_s: InSeconds.optional().describe('In a mixed tank: the time that this film alone would be developed for.'),
    departs: z.number().optional().describe('In a mixed tank: planned time ÷ wanted time − 1.'),
  })
  .meta({ id: 'OnReel' })
/** What is to go in: of a roll of the register film and index are the register’s. */
export const AskedOnReel = z
  .strictObject({
    film: Name.optional(),
    ...onReel,
    roll_id: Id.optional(),
    time_id: Id.optional().describe('The kept time by which it would be developed alone.'),
    wants_s: InSeconds.optional().describe('How long it would be developed alone, where no kept time says so.'),
  })
  .meta({ id: 'AskedOnReel' })

/** Rolls of their kind are stopped until this is said to be taken care of. */
const Confirmed = z.enum(['carbon-backing', 'infrared'])

/** The bottle that a bath comes from; `step` is its place in the list, from 0. */
const AskedFromShelf = z.strictObject({
  step: z.int().min(0).max(63),
  container_id: Id,
  lot_id: Id.nullable().default(null).describe('The lot that the person believes is in it.'),
  poured_ml: Amount.min(0.001).optional().describe('Left out, the volume of the tank.'),
})
export const FromShelf = z
  .strictObject({
    step: z.int(),
    container_id: Id,
    name: z.string(),
    lot_id: Id.nullable(),
    code: z.string().nullable(),
    product: z.string(),
    poured_ml: z.number(),
    film: z.array(MetFilm).describe('What it will meet.'),
  })
  .meta({ id: 'FromShelf' })

const tank = {
  reels: z.int().min(1).max(40),
  developer: Text(120).default(''),
  dilution_parts: z.array(z.number().positive().max(1000)).min(1).max(4).nullable().default(null),
  recipe: Recipe,
}
const AskedTank = z
  .strictObject({
    ...tank,
    on_reels: z.array(AskedOnReel).min(1).max(40),
    conditions: AskedConditions,
    vessel_id: Id.optional().describe('The tank of the kit that it is; what is planned has to fit it.'),
    crosses_because: Note.optional().describe('Why own film goes through a list that it is not made for.'),
    confirmed: z.array(Confirmed).max(2).optional(),
    from_shelf: z.array(AskedFromShelf).max(20).optional(),
  })
  .meta({ id: 'AskedTank' })
/** A tank as it was planned: list, basis and all, whatever is corrected on the shelf later. */
export const PlannedTank = z
  .strictObject({
    ...tank,
    on_reels: z.array(OnReel).min(1).max(40),
    vessel: z.strictObject({ id: Id, name: z.string() }).optional(),
    crosses_because: Note.optional(),
    confirmed: z.array(Confirmed).max(2).optional(),
    from_shelf: z.array(FromShelf).optional(),
    conditions: TankConditions,
    time: z.strictObject({ time_id: Id, revision: Revision, source_words: z.string() }).nullable(),
  })
  .meta({ id: 'PlannedTank' })

const about = {
  practice: z
    .union([z.literal(1), z.literal(5), z.literal(20)])
    .nullable()
    .default(null)
    .describe('How many times as fast a practice run goes; null for a run with film that counts.'),
  note: Note.default(''),
}
export const PlanRun = z
  .strictObject({ ...about, thermometer_id: Id.nullable().default(null), tanks: z.array(AskedTank).min(1).max(8) })
  .meta({ id: 'PlanRun' })
export const RunPlan = z
  .strictObject({
    ...about,
    thermometer: z
      .strictObject({
        id: Id,
        name: z.string(),
        off_c: z.number().optional().describe('How much it shows too much near the developer’s temperature.'),
        band_c: z.number().optional().describe('How far it may be out all the same (95 %).'),
      })
      .nullable(),
    tanks: z.array(PlannedTank),
  })
  .meta({ id: 'RunPlan' })
