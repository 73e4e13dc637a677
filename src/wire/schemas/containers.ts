import { z } from 'zod'
import { Id, InstantText, Name, Note, Revision, Seen, Text } from './common.js'
import { LocalDate } from './rolls.js'

/** A thousandth of this is the least that is counted: whole microlitres and milligrams. */
export const Amount = z.number().min(0).max(1_000_000).describe('mL, or g of a powder, to a thousandth.')
export const AmountUnit = z.enum(['ml', 'g'])

export const PackageStatement = z.strictObject({
  kind: z.literal('package'),
  name: Text(120).default(''),
  product_id: Id,
  part: Text(20).default(''),
  unit: AmountUnit,
  full: Amount.min(0.001).describe('What it held when it was bought.'),
  bought: LocalDate.nullable().default(null),
  use_by: LocalDate.nullable().default(null),
  opened: LocalDate.nullable().default(null),
  price: z
    .strictObject({ minor: z.int().min(0).max(100_000_000), currency: z.string().regex(/^[A-Z]{3}$/) })
    .nullable()
    .default(null),
  note: Note.default(''),
})
export const BottleStatement = z.strictObject({
  kind: z.literal('bottle'),
  name: Name,
  shape: z.enum(['stoppered', 'collapsible', 'tank', 'tray']).default('stoppered'),
  holds_ml: Amount.min(1),
  note: Note.default(''),
})
export const JugStatement = z.strictObject({
  kind: z.literal('jug'),
  name: Name,
  holds_ml: Amount.min(1),
  opened: LocalDate.nullable().default(null),
  note: Note.default(''),
})
/** Whatever holds something: a package as bought, a bottle for what was mixed, a jug for waste. */
export const ContainerStatement = z
  .discriminatedUnion('kind', [PackageStatement, BottleStatement, JugStatement])
  .meta({ id: 'ContainerStatement' })

export const AddContainer = z
  .strictObject({
    statement: ContainerStatement,
    holds: Amount.nullable().default(null).describe('What is in it; null for a full package, an empty bottle or jug.'),
  })
  .meta({ id: 'AddContainer' })
export const CorrectContainer = Seen.extend({ statement: ContainerStatement }).meta({ id: 'CorrectContainer' })

export const ContainerRecord = z
  .object({
    id: Id,
    revision: Revision,
    saved_at: InstantText,
    removed: z.boolean(),
    statement: ContainerStatement,
    unit: AmountUnit,
    held: z.number(),
    lot_id: Id.nullable(),
  })
  .meta({ id: 'ContainerRecord' })
