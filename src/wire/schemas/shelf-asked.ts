import { z } from 'zod'
import { Id, Note } from './common.js'
import { At, OnShelf, ShelfEntry } from './shelf.js'
import { WashAnswer, WashQuestion } from './waste.js'

/** Two fixing baths that film goes through one after the other. */
export const PairAsked = z.strictObject({ first_id: Id, second_id: Id }).meta({ id: 'PairAsked' })
export const PairView = z
  .object({
    used: z.number().describe('Part of the first bath’s count; 1 and more is the end.'),
    verdict: z.enum(['carry-on', 'rotate']),
    because: z.array(z.enum(['count', 'clearing'])),
    left_rolls: z.number().describe('Ordinary rolls that the first bath still takes.'),
    containers: z.array(OnShelf),
  })
  .meta({ id: 'PairView' })
export const RotateBaths = z
  .strictObject({
    first_id: Id,
    second_id: Id,
    fresh_id: Id.nullable().default(null).describe('The bottle that becomes the second bath.'),
    jug_id: Id,
    at: At,
    note: Note.default(''),
  })
  .meta({ id: 'RotateBaths' })
export const Rotated = z.object({ entries: z.array(ShelfEntry), containers: z.array(OnShelf) }).meta({ id: 'Rotated' })

/** A wash after the fixer in a bottle: the ledger says what that was. */
export const ShelfWash = z
  .strictObject({ fixer_id: Id.nullable().default(null), wash: WashQuestion.omit({ after: true }) })
  .meta({ id: 'ShelfWash' })
export const ShelfWashAnswer = WashAnswer.extend({
  fixer: z
    .object({
      id: Id,
      name: z.string(),
      code: z.string().nullable(),
      state: z.enum(['usable', 'finished', 'unknown']),
    })
    .nullable(),
}).meta({ id: 'ShelfWashAnswer' })
