import { z } from 'zod'
import { Duration, Id, InstantText, Name, Note, Temperature, Text } from './common.js'
import { Amount, AmountUnit, ContainerRecord } from './containers.js'
import { LeftView } from './left.js'
import { ProductRole } from './products.js'
import { FilmFormat } from './rolls.js'

export const FixingFamily = z.enum(['ordinary', 'tabular', 'high-iodide'])
const Ratio = z.array(z.number().min(0.01).max(1000)).min(1).max(4)
export const At = InstantText.nullable().default(null).describe('When it was; null for now.')

/** Film that a bath met. */
export const MetFilm = z
  .strictObject({
    format: FilmFormat,
    frames: z.int().min(1).max(100).nullable().default(null).describe('Of a 135 length; null for 36.'),
    count: z.int().min(1).max(10_000).default(1),
    family: FixingFamily.default('ordinary'),
  })
  .meta({ id: 'MetFilm' })

/** A test of a bath, as it was read. */
export const ShelfTest = z
  .discriminatedUnion('of', [
    z.strictObject({
      of: z.literal('clearing'),
      clears_s: Duration.min(3).max(3600),
      family: FixingFamily.default('ordinary'),
      fresh: z.boolean().default(false).describe('The bath is new: this is what later tests are held against.'),
    }),
    z.strictObject({ of: z.literal('indicator'), colour: z.enum(['yellow', 'turning', 'purple']) }),
    z.strictObject({
      of: z.literal('leader'),
      darkens: z.enum(['fully', 'weakly', 'not']),
      after_s: Duration.min(1).max(3600),
    }),
    z.strictObject({ of: z.enum(['residual-hypo', 'residual-silver']), passed: z.boolean() }),
    z.strictObject({ of: z.literal('ph'), ph: z.number().min(0).max(14) }),
    z.strictObject({
      of: z.literal('specific-gravity'),
      gravity: z.number().min(0.7).max(2),
      at_c: Temperature.nullable().default(null),
    }),
  ])
  .meta({ id: 'ShelfTest' })

export const DiscardWhere = z.enum(['jug', 'given-away', 'spilt', 'as-allowed'])
export const Station = z.enum(['first', 'second'])

/** Which bath of a run it was: the tank, and the place of the bath in its list from 0. */
const OfRun = z.strictObject({ tank: Text(12), step: z.int().min(0) })

/** What an entry of the ledger tells beside its amounts. */
export const EntryTold = z
  .discriminatedUnion('kind', [
    z.object({ kind: z.literal('brought-in') }),
    z.object({ kind: z.literal('mixed'), parts: Ratio.nullable() }),
    z.object({
      kind: z.literal('used'),
      film: z.array(MetFilm),
      rolls: z.number(),
      poured_ml: z.number(),
      lost_ml: z.number(),
      run_id: Id.nullable(),
      roll_ids: z.array(Id),
      bath: OfRun.optional(),
    }),
    z.object({ kind: z.literal('topped-up') }),
    z.object({ kind: z.literal('moved') }),
    z.object({ kind: z.literal('discarded'), where: DiscardWhere }),
    z.object({ kind: z.literal('measured'), found: z.number() }),
    z.object({ kind: z.literal('tested'), test: ShelfTest, met_rolls: z.number() }),
    z.object({ kind: z.literal('stationed'), station: Station.nullable() }),
    z.object({ kind: z.literal('handed-over'), to: z.string() }),
    z.object({ kind: z.literal('taken-back') }),
  ])
  .meta({ id: 'EntryTold' })

/** What an entry changed in one container. */
const EntryLeg = z.object({
  container_id: Id,
  lot_id: Id.nullable(),
  unit: AmountUnit,
  change: z.number().describe('mL or g, below zero for what left.'),
  rolls: z.number().describe('Rolls that it met since it was fresh, moved along with it.'),
})
export const ShelfEntry = z
  .object({
    id: Id,
    at: InstantText,
    by: z.string(),
    told: EntryTold,
    note: z.string(),
    legs: z.array(EntryLeg),
    retracts: Id.nullable(),
    retracted: z.boolean(),
  })
  .meta({ id: 'ShelfEntry' })
export const ShelfEntries = z.object({ entries: z.array(ShelfEntry) }).meta({ id: 'ShelfEntries' })

export const LotHead = z
  .object({
    id: Id,
    code: z.string(),
    product_id: Id,
    product: z.string(),
    role: ProductRole,
    parts: Ratio.nullable(),
    mixed_at: InstantText,
    mixed_by: z.string(),
    mixed_ml: z.number(),
    note: z.string(),
  })
  .meta({ id: 'LotHead' })

/** What came to a bath since it was filled, and left it: mL. */
export const ShelfBook = z
  .object({ added_ml: z.number(), discarded_ml: z.number(), carried_out_ml: z.number() })
  .meta({ id: 'ShelfBook' })
/** A bottle, package or jug with what stands in it and what that can still do. */
export const OnShelf = ContainerRecord.extend({
  lot: LotHead.nullable(),
  product: z.string().describe('What is in it, by name; empty for an empty bottle and for a jug.'),
  since: InstantText.nullable().describe('When what is in it came in.'),
  station: Station.nullable(),
  left: LeftView.nullable(),
  book: ShelfBook.nullable().describe('Null for a package and an empty bottle.'),
}).meta({ id: 'OnShelf' })

export const SilverBand = z.object({ low: z.number(), usual: z.number(), high: z.number() })
export const JugView = z
  .object({
    id: Id,
    name: z.string(),
    holds_ml: z.number(),
    held_ml: z.number(),
    silver_rich_ml: z.number(),
    rolls: z.number(),
    silver_g: SilverBand.describe('An estimate with its band.'),
    opened_at: InstantText.nullable().describe('When the first waste of this filling went in.'),
    full: z.boolean(),
    full_on: InstantText.nullable().describe('At the present pace.'),
    record: ContainerRecord,
  })
  .meta({ id: 'JugView' })

export const Shelf = z
  .object({ bottles: z.array(OnShelf), packages: z.array(OnShelf), jugs: z.array(JugView) })
  .meta({ id: 'Shelf' })
const Money = z.number().describe('In the smallest coin, with fractions.')
const Currency = z.string().describe('Three letters.')
export const ShelfCost = z
  .object({
    minor: Money,
    currency: Currency,
    whole: z.boolean().describe('Whether everything that went in had a price.'),
    per_roll_minor: Money.nullable(),
  })
  .meta({ id: 'ShelfCost' })
/** What a run took of the lots that were booked for it. */
export const RunCost = z
  .object({
    baths: z.array(
      z.object({
        lot_id: Id,
        code: z.string(),
        product: z.string(),
        minor: Money.nullable(),
        currency: Currency.nullable(),
      }),
    ),
    minor: Money.nullable(),
    currency: Currency.nullable(),
    whole: z.boolean(),
  })
  .meta({ id: 'RunCost' })
export const LotView = z
  .object({
    lot: LotHead,
    containers: z.array(OnShelf),
    cost: ShelfCost.nullable().describe('By the prices on its packages; null where none has one.'),
    history: z.array(ShelfEntry),
  })
  .meta({ id: 'LotView' })
export const LotHeads = z
  .object({ lots: z.array(LotHead), found: z.int(), next: z.string().nullable() })
  .meta({ id: 'LotHeads' })
export const FindLots = z
  .strictObject({
    words: Text(200).default(''),
    after: z.string().max(60).nullable().default(null),
    most: z.int().min(1).max(500).default(50),
  })
  .meta({ id: 'FindLots' })
export const LotByCode = z.strictObject({ code: Text(200).trim().min(1) })

export const FinishMix = z
  .strictObject({
    product_id: Id,
    parts: Ratio.nullable().default(null),
    from: z
      .array(z.strictObject({ container_id: Id, amount: Amount.min(0.001) }))
      .max(40)
      .default([]),
    into: z
      .array(z.strictObject({ container_id: Id, ml: Amount.min(0.001) }))
      .min(1)
      .max(40),
    at: At,
    note: Note.default(''),
  })
  .meta({ id: 'FinishMix' })

export const UseBath = z
  .strictObject({
    container_id: Id,
    lot_id: Id.nullable().default(null).describe('The lot that the person believes is in it.'),
    for_role: ProductRole.nullable().default(null).describe('The bath that it is to be; another role is refused.'),
    film: z.array(MetFilm).max(200).default([]),
    poured: Amount.min(0.001).describe('What was poured out of it: mL, or g from a package of powder.'),
    lost: Amount.nullable().default(null).describe('What did not come back; null for the product’s own rule.'),
    back_into: Id.nullable().default(null).describe('The bottle that it went back into; null for none, as single-use.'),
    run_id: Id.nullable().default(null),
    roll_ids: z.array(Id).max(500).default([]),
    bath: OfRun.optional(),
    over_count: z.boolean().default(false).describe('It happened all the same, past what the bath carries.'),
    at: At,
    note: Note.default(''),
  })
  .meta({ id: 'UseBath' })
export const TestBath = z
  .strictObject({ container_id: Id, test: ShelfTest, at: At, note: Note.default('') })
  .meta({ id: 'TestBath' })
export const MovePortion = z
  .strictObject({
    from_id: Id,
    into_id: Id,
    amount: Amount.min(0.001).nullable().default(null).describe('Null for all of it.'),
    top_up: z.boolean().default(false).describe('Fresh stock or replenisher into a bath in use.'),
    at: At,
    note: Note.default(''),
  })
  .meta({ id: 'MovePortion' })
export const Discard = z
  .strictObject({
    container_id: Id,
    amount: Amount.min(0.001).nullable().default(null).describe('Null for all of it.'),
    where: DiscardWhere,
    jug_id: Id.nullable().default(null),
    at: At,
    note: Note.default(''),
  })
  .meta({ id: 'Discard' })
export const MeasureContents = z
  .strictObject({ container_id: Id, found: Amount, seen: Amount, at: At, note: Note.default('') })
  .meta({ id: 'MeasureContents' })
export const StationBath = z
  .strictObject({ container_id: Id, station: Station.nullable(), at: At, note: Note.default('') })
  .meta({ id: 'StationBath' })
export const HandOver = z
  .strictObject({
    jug_id: Id,
    ml: Amount.min(0.001).nullable().default(null),
    to: Name,
    at: At,
    note: Note.default(''),
  })
  .meta({ id: 'HandOver' })
export const TakeBack = z.strictObject({ note: Note.default('') }).meta({ id: 'TakeBack' })

/** What was done, and how the containers stand after it. */
export const Posted = z
  .object({ entry: ShelfEntry, containers: z.array(OnShelf), lot: LotHead.nullable() })
  .meta({ id: 'Posted' })
