import { z } from 'zod'
import { Id, InstantText, Name, Note, Revision, Seen, Text } from './common.js'
import { LocalDate, RollState, RollSummary } from './rolls.js'

/** What somebody handed over, and what was agreed. */
export const OrderStatement = z
  .strictObject({
    person: Name,
    contact: Text(200).default(''),
    counted_in: z.int().min(1).max(500).describe('Rolls counted when they were handed over.'),
    due: LocalDate.nullable().default(null),
    deposit: Text(60).default(''),
    agreed_on_loss: Note.default(''),
    note: Note.default(''),
  })
  .meta({ id: 'OrderStatement' })
export const OrderRecord = OrderStatement.extend({
  id: Id,
  revision: Revision,
  saved_at: InstantText,
  removed: z.boolean(),
  rolls: z.array(RollSummary),
  counted_out: z.int().nullable().describe('Rolls counted when they were handed back; null while they are here.'),
  links: z.array(z.object({ id: Id, made_at: InstantText, expires_at: InstantText, revoked: z.boolean() })),
}).meta({ id: 'OrderRecord' })
export const OrderRecords = z.object({ orders: z.array(OrderRecord) }).meta({ id: 'OrderRecords' })
export const AddOrder = OrderStatement.meta({ id: 'AddOrder' })
export const CorrectOrder = Seen.extend({ statement: OrderStatement }).meta({ id: 'CorrectOrder' })
/** Hands an order back; the count must be the number of its rolls that are here. */
export const HandBack = z.strictObject({ counted_out: z.int().min(0).max(500) }).meta({ id: 'HandBack' })

export const MakeOrderLink = z.strictObject({ days: z.int().min(1).max(365).default(60) }).meta({ id: 'MakeOrderLink' })
/** The link is shown once; only its hash is kept. */
export const OrderLink = z.object({ id: Id, token: z.string(), expires_at: InstantText }).meta({ id: 'OrderLink' })
export const OrderToken = z.object({
  token: z
    .string()
    .min(20)
    .max(200)
    .regex(/^[A-Za-z0-9_-]+$/),
})
/** All that a link shows: how far each roll is, in words, and nothing else. */
export const OrderStanding = z
  .object({
    rolls: z.array(z.object({ number: z.string(), state: RollState, sentence: z.string() })),
    ready: z.boolean(),
  })
  .meta({ id: 'OrderStanding' })
