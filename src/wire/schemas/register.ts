import { z } from 'zod'
import { Id, InstantText, Note, Text } from './common.js'
import { FilmStatement } from './films.js'
import { OrderStatement } from './orders.js'
import { RollState, RollStatement } from './rolls.js'

const By = Text(60).min(1).describe('Who did it: the owner, or the id of a device.')
const Year = z.int().min(0).max(9999).describe('0 where numbers have no year.')
const Running = z.int().min(1).max(999_999_999)

/** A step on the way of a roll as it was noted; one that retracts another has no state. */
const Step = z.strictObject({
  id: Id,
  at: InstantText,
  by: By,
  state: RollState.nullable(),
  run_id: Id.nullable(),
  hook: Text(60),
  reason: Note,
  batch_id: Id.nullable(),
  retracts: Id.nullable(),
})

const Roll = z.strictObject({
  id: Id,
  number: Text(60).min(1),
  year: Year,
  n: Running,
  twin: z.int().min(1).nullable(),
  order_id: Id.nullable(),
  taken_in_at: InstantText,
  taken_in_by: By,
  statement: RollStatement,
  steps: z.array(Step),
})

const CountedOut = z.strictObject({ count: z.int().min(0).max(500), at: InstantText, by: By })
const Stated = { id: Id, saved_at: InstantText, saved_by: By }

/** The whole register of rolls: what goes from one bench to another, and what a table program shows. */
export const RollRegister = z
  .strictObject({
    register: z.literal('rolls'),
    version: z.literal(1),
    pattern: Text(40).min(1).nullable().describe('How rolls are numbered; null as it comes.'),
    counters: z
      .array(z.strictObject({ kind: z.enum(['roll', 'twin']), year: Year, last: Running }))
      .describe('The last number that was given or reserved, a kind and a year.'),
    films: z.array(z.strictObject({ ...Stated, statement: FilmStatement })),
    orders: z.array(z.strictObject({ ...Stated, statement: OrderStatement, counted_out: CountedOut.nullable() })),
    rolls: z.array(Roll),
  })
  .meta({ id: 'RollRegister' })

/** A register as it was exported, CSV or JSON. */
export const ImportRegister = z
  .strictObject({ text: z.string().min(1).max(60_000_000) })
  .meta({ id: 'ImportRegister', description: 'The text of an exported file, CSV or JSON.' })
/** What an import added, and how many rolls were there already and stayed. */
export const ImportedRegister = z
  .object({ rolls: z.int(), orders: z.int(), films: z.int(), there: z.int() })
  .meta({ id: 'ImportedRegister' })
