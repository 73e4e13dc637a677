import { z } from 'zod'
import { Id, InstantText, Name, Note, Revision, Seen } from './common.js'
import { FilmFormat } from './rolls.js'

const Volume = z.number().min(0.1).max(100_000).describe('millilitres')
const Material = z.enum(['steel', 'plastic', 'glass'])

/** So many reels of a format, and how much covers them. */
const Holds = z.strictObject({ format: FilmFormat, reels: z.int().min(1).max(40), covers_ml: Volume })
export const TankStatement = z.strictObject({
  kind: z.literal('tank'),
  name: Name,
  moved: z.enum(['inversion', 'rotary']),
  material: Material,
  holds: z.array(Holds).min(1).max(60),
  warmth_g: z.number().min(0).max(5000).nullable().default(null).describe('Its own warmth as grams of water.'),
  time_constant_s: z.number().min(60).max(200_000).nullable().default(null),
  note: Note.default(''),
})
export const ReelStatement = z.strictObject({
  kind: z.literal('reel'),
  name: Name,
  formats: z.array(FilmFormat).min(1).max(12),
  material: Material,
  wet_at: InstantText.nullable().default(null).describe('When it was last wet; null when it is dry.'),
  note: Note.default(''),
})
export const GraduateStatement = z.strictObject({
  kind: z.enum(['graduate', 'syringe']),
  name: Name,
  holds_ml: Volume,
  marked_every_ml: Volume,
  note: Note.default(''),
})
/** A tank, a reel, a graduate or a syringe. */
export const VesselStatement = z
  .discriminatedUnion('kind', [TankStatement, ReelStatement, GraduateStatement])
  .meta({ id: 'VesselStatement' })
export const VesselRecord = z
  .object({ id: Id, revision: Revision, saved_at: InstantText, removed: z.boolean(), statement: VesselStatement })
  .meta({ id: 'VesselRecord' })
export const VesselRecords = z.object({ vessels: z.array(VesselRecord) }).meta({ id: 'VesselRecords' })
export const AddVessel = z.strictObject({ statement: VesselStatement }).meta({ id: 'AddVessel' })
export const CorrectVessel = Seen.extend({ statement: VesselStatement }).meta({ id: 'CorrectVessel' })
