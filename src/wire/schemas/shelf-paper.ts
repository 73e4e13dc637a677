import { z } from 'zod'
import { InstantText, Paper } from './common.js'
import { Hazard } from './products.js'
import { SilverBand } from './shelf.js'

const CODES = /^[^,]{1,40}(?:,[^,]{1,40}){0,99}$/

/** Of which lots labels are wanted, and on what. */
export const LabelsQuery = z.strictObject({
  codes: z.string().regex(CODES).describe('Codes of lots, commas between.'),
  layout: z.enum(['A4', 'Letter', 'roll']).optional().describe('The paper of the bench when left out.'),
  used: z.coerce.number().int().min(0).max(13).default(0).describe('Places of the first sheet that are used up.'),
})
export const RecordQuery = z.strictObject({ paper: Paper.optional() })

/** What the label of a lot says. */
export const LabelFacts = z.object({
  name: z.string(),
  code: z.string(),
  parts: z.array(z.number()).nullable(),
  mixed_at: InstantText,
  mixed_by: z.string().describe('The device that it was noted on; empty for the owner.'),
  use_by: InstantText.nullable(),
  hazards: z.array(Hazard),
})
/** What the record of a hand-over says. */
export const HandOverFacts = z.object({
  at: InstantText,
  to: z.string(),
  jug: z.string(),
  ml: z.number(),
  rolls: z.number(),
  silver_g: SilverBand,
  note: z.string(),
})
