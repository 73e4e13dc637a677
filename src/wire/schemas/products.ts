import { z } from 'zod'
import { Id, InstantText, Name, Note, Revision, Seen, Temperature, Text } from './common.js'
import { FilmProcess } from './rolls.js'
import { DeveloperClass } from './times.js'

export const ProductRole = z.enum([
  'developer',
  'stop',
  'fixer',
  'wash-aid',
  'wetting-agent',
  'toner',
  'bleach',
  'cleaner',
  'other',
])
/** `single-use`: gone with its roll; `reusable`: poured back and counted; `replenished`: topped up after each roll. */
export const ProductUse = z.enum(['single-use', 'reusable', 'replenished'])
export const Hazard = z.enum([
  'acid',
  'caustic',
  'strong-acid',
  'sensitiser',
  'irritant',
  'fumes',
  'oxidiser',
  'poison',
  'flammable',
])
export const ProductOrigin = z.enum(['label', 'sheet', 'own', 'practice', 'memory', 'assumption'])

const Days = z.number().min(0.01).max(10_000).nullable().default(null)
const Percent = z.number().min(0.01).max(100)
const Parts = z.array(z.number().min(0.01).max(1000)).min(1).max(4).describe('1 + 4 is [1, 4].')

/** Days that it keeps in each state; null falls back to common practice for its kind where there is one. */
const Keeps = z.strictObject({ full: Days, half_full: Days, tray: Days, tank: Days }).meta({ id: 'ProductKeeps' })

const Addition = z.strictObject({
  salt: z.string().min(1).max(60).describe('Id in the table of salts.'),
  g_per_l: z.number().min(0).max(1000).nullable().default(null),
  ml_per_l: z.number().min(0).max(1000).nullable().default(null),
  percent: Percent.nullable().default(null),
})
/** A bath mixed by weight, in this order. */
export const ProductFormula = z
  .strictObject({
    additions: z.array(Addition).min(1).max(30),
    water_first: z.number().min(0.1).max(1),
    from_c: Temperature,
    to_c: Temperature,
  })
  .meta({ id: 'ProductFormula' })

export const ProductStatement = z
  .strictObject({
    name: Name,
    role: ProductRole,
    process: FilmProcess.default('black-and-white'),
    form: z.enum(['liquid', 'powder']).default('liquid').describe('What its packages are counted in: mL or g.'),
    use: ProductUse,
    package_parts: z.array(Text(20).trim().min(1)).max(4).default([]).describe('Parts A and B; none for one package.'),
    dilutions: z.array(Parts).max(12).default([]),
    fixer: z
      .strictObject({ salt: z.enum(['sodium-thiosulfate', 'ammonium-thiosulfate']), alkaline: z.boolean() })
      .nullable()
      .default(null),
    stop: z
      .strictObject({ acid: z.enum(['acetic', 'citric']), percent: z.number().min(0.01).max(30) })
      .nullable()
      .default(null),
    rolls_per_litre: z
      .number()
      .min(1)
      .max(500)
      .nullable()
      .default(null)
      .describe('By its label; null where none says.'),
    family_capacity: z
      .number()
      .min(0.1)
      .max(2)
      .nullable()
      .default(null)
      .describe('Rolls of tabular or high-iodide film as a part of the ordinary count; null for 0.6, assumed.'),
    silver_limit_g_per_l: z.number().min(0.1).max(20).nullable().default(null),
    floor_ml_per_roll: z.number().min(0.1).max(2000).nullable().default(null),
    carried_out_ml_per_roll: z.number().min(0).max(500).nullable().default(null),
    replenish_ml_per_roll: z.number().min(0.1).max(2000).nullable().default(null),
    longer_percent_per_roll: z
      .number()
      .min(0)
      .max(100)
      .nullable()
      .default(null)
      .describe('What each roll that it met adds to the next developing time.'),
    keeps: Keeps.prefault({}),
    coefficient_class: DeveloperClass.nullable().default(null),
    hazards: z.array(Hazard).max(9).default([]),
    formula: ProductFormula.nullable().default(null),
    origin: ProductOrigin.default('label'),
    source: Text(300).default(''),
    note: Note.default(''),
  })
  .meta({ id: 'ProductStatement' })

export const ProductRecord = ProductStatement.extend({
  id: Id,
  revision: Revision,
  saved_at: InstantText,
  removed: z.boolean(),
}).meta({ id: 'ProductRecord' })
export const ProductRecords = z.object({ products: z.array(ProductRecord) }).meta({ id: 'ProductRecords' })
export const AddProduct = ProductStatement.meta({ id: 'AddProduct' })
export const CorrectProduct = Seen.extend({ statement: ProductStatement }).meta({ id: 'CorrectProduct' })
/** Generic records by composition, to be kept and edited. */
export const StartingProducts = z.object({ products: z.array(ProductStatement) }).meta({ id: 'StartingProducts' })
