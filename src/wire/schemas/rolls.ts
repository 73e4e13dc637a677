import { z } from 'zod'
import { Id, InstantText, Name, Note, Revision, Seen, Text } from './common.js'

/** `2026`, `2026-07`, `2026-07-14`, or a season by ISO 8601-2: 21 spring, 22 summer, 23 autumn, 24 winter. */
export const PartialDate = z
  .string()
  .regex(/^\d{4}(?:-(?:(?:0[1-9]|1[0-2])(?:-(?:0[1-9]|[12]\d|3[01]))?|2[1-4]))?$/)
  .meta({ id: 'PartialDate', description: 'A year, a month, a day, or a season (ISO 8601-2: 2026-22 is a summer).' })
export const LocalDate = z.iso.date().meta({ id: 'LocalDate', description: 'A day where the bench is.' })

export const FilmProcess = z.enum(['black-and-white', 'colour-negative', 'colour-reversal'])
/** How a roll is cut; lengths of 135 are said by frames, sheets by their number. */
export const FilmFormat = z.enum([
  '135',
  '120',
  '220',
  '127',
  '110',
  '4x5',
  '5x7',
  '8x10',
  '11x14',
  '9x12cm',
  '13x18cm',
])
export const RollRemark = z.enum(['found', 'expired', 'infrared', 'carbon-backing', 'chromogenic'])
export const RollState = z.enum([
  'taken-in',
  'loaded',
  'developed',
  'hung',
  'sleeved',
  'scanned',
  'handed-back',
  'lost',
  'ruined',
])

const Index = z.int().min(1).max(25_600)
/** What was asked for: as usual, as if it were another index (push or pull), or for a contrast of one's own. */
export const Treatment = z
  .discriminatedUnion('as', [
    z.strictObject({ as: z.literal('normal') }),
    z.strictObject({ as: z.literal('index'), index: Index }),
    z.strictObject({ as: z.literal('contrast'), contrast: z.number().min(0.2).max(2) }),
  ])
  .meta({ id: 'Treatment' })

const statement = {
  film: Name,
  process: FilmProcess,
  format: FilmFormat,
  frames: z.int().min(1).max(100).nullable().default(null).describe('Frames of a 135 length; null for 36.'),
  sheets: z.int().min(1).max(500).default(1).describe('How many sheets; 1 for a roll.'),
  whose: Name.nullable().default(null).describe('Whose film it is; null for one’s own.'),
  exposure_index: Index.nullable().default(null),
  treatment: Treatment.default({ as: 'normal' }),
  exposed: PartialDate.nullable().default(null),
  expired_since: PartialDate.nullable().default(null),
  remarks: z.array(RollRemark).max(5).default([]),
  due: LocalDate.nullable().default(null),
  note: Note.default(''),
}
export const RollStatement = z.strictObject(statement).meta({ id: 'RollStatement' })

/** A number that a device took from a block reserved for it, while it was away from the server. */
const TakenNumber = z.strictObject({ block_id: Id, n: z.int().min(1) })
const TakeIn = z.strictObject({ statement: RollStatement, number: TakenNumber.nullable().default(null) })
export const TakeInRolls = z
  .strictObject({
    order_id: Id.nullable().default(null),
    rolls: z.array(TakeIn).min(1).max(500),
  })
  .meta({ id: 'TakeInRolls' })
export const CorrectRoll = Seen.extend({ statement: RollStatement }).meta({ id: 'CorrectRoll' })

export const RollEvent = z
  .object({
    id: Id,
    at: InstantText,
    by: z.string(),
    state: RollState,
    run_id: Id.nullable(),
    hook: z.string(),
    reason: z.string(),
    batch_id: Id.nullable(),
    retracted: z.boolean(),
  })
  .meta({ id: 'RollEvent' })

/** A roll as lists show it. */
export const RollSummary = z
  .object({
    ...statement,
    id: Id,
    number: z.string(),
    twin: z.int().nullable().describe('The number of the paired stickers of somebody else’s film.'),
    order_id: Id.nullable(),
    revision: Revision,
    taken_in_at: InstantText,
    state: RollState,
    state_at: InstantText,
    run_id: Id.nullable().describe('The run that it was loaded for, or came out of.'),
    hook: z.string(),
  })
  .meta({ id: 'RollSummary' })
/** What was said of a roll at one time; every correction is a further one, and the old ones stay. */
export const RollRevision = z
  .object({
    revision: Revision,
    at: InstantText,
    by: z.string(),
    order_id: Id.nullable(),
    statement: z.object(statement),
  })
  .meta({ id: 'RollRevision' })
export const RollRecord = RollSummary.extend({
  history: z.array(RollEvent),
  revisions: z.array(RollRevision).describe('All that was said of it, oldest first; the last one stands.'),
}).meta({ id: 'RollRecord' })
export const RollRecords = z.object({ rolls: z.array(RollRecord) }).meta({ id: 'RollRecords' })
export const RollSummaries = z
  .object({ rolls: z.array(RollSummary), found: z.int(), next: z.string().nullable() })
  .meta({ id: 'RollSummaries' })

/** What is looked for; words are found in number, film, person and note. */
const look = {
  words: Text(200).default(''),
  state: z.array(RollState).max(9).default([]),
  film: Text(120).default(''),
  whose: Text(120).default(''),
  process: FilmProcess.nullable().default(null),
  due_by: LocalDate.nullable().default(null),
  taken_in_from: LocalDate.nullable().default(null),
  taken_in_to: LocalDate.nullable().default(null),
  order_id: Id.nullable().default(null),
}
export const RollSearch = z.strictObject(look).meta({ id: 'RollSearch' })
export const FindRolls = z
  .strictObject({
    look: RollSearch.prefault({}),
    after: z.string().max(60).nullable().default(null),
    most: z.int().min(1).max(500).default(50),
  })
  .meta({ id: 'FindRolls' })

/** A step of the way, for one roll or many at once; lost and ruined need a reason. */
export const MoveRolls = z
  .strictObject({
    roll_ids: z.array(Id).min(1).max(500),
    state: RollState,
    run_id: Id.nullable().default(null),
    hook: Text(60).default(''),
    reason: Note.default(''),
    at: InstantText.nullable().default(null).describe('When it was; null for now.'),
  })
  .meta({ id: 'MoveRolls' })
/** The same words changed on many rolls at once; what is not named stays. */
export const ChangeRolls = z
  .strictObject({
    roll_ids: z.array(Id).min(1).max(500),
    change: z
      .strictObject({
        film: Name,
        process: FilmProcess,
        whose: Name.nullable(),
        exposure_index: Index.nullable(),
        treatment: Treatment,
        due: LocalDate.nullable(),
        order_id: Id.nullable(),
      })
      .partial(),
  })
  .meta({ id: 'ChangeRolls' })
/** What a change of many did; its id takes it back. */
export const RollBatch = z.object({ batch_id: Id, rolls: z.array(RollSummary) }).meta({ id: 'RollBatch' })

/** As typed, or the address that a sticker's code holds. */
export const ByNumber = z.strictObject({ number: Text(300).trim().min(1) })
export const ReserveNumbers = z.strictObject({ count: z.int().min(1).max(200) }).meta({ id: 'ReserveNumbers' })
export const NumberBlock = z
  .object({ block_id: Id, first: z.int(), last: z.int(), numbers: z.array(z.string()) })
  .meta({ id: 'NumberBlock' })
export const NumberPattern = z
  .strictObject({ pattern: Text(40).trim().min(1) })
  .meta({ id: 'NumberPattern', description: '{year} and {n}, {n4} with four digits: {year}-{n4} makes 2026-0017.' })

export const SavedView = z
  .object({ id: Id, revision: Revision, name: Name, look: RollSearch })
  .meta({ id: 'SavedView' })
export const SavedViews = z.object({ views: z.array(SavedView) }).meta({ id: 'SavedViews' })
export const KeepView = z.strictObject({ name: Name, look: RollSearch }).meta({ id: 'KeepView' })
