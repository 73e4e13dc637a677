import { z } from 'zod'
import { Id, Paper } from './common.js'
import { OrderToken } from './orders.js'

const UUIDS = /^[0-9a-f-]{36}(?:,[0-9a-f-]{36}){0,199}$/

/** Of which rolls stickers are wanted: an order's, or up to 200 by their ids with commas between. */
export const StickersQuery = z.strictObject({
  paper: Paper.optional(),
  order_id: Id.optional(),
  roll_ids: z.string().regex(UUIDS).optional().describe('Ids of rolls, commas between.'),
  used: z.coerce.number().int().min(0).max(39).default(0).describe('Places of the first sheet that are used up.'),
})
export const SlipQuery = z.strictObject({ paper: Paper.optional(), token: OrderToken.shape.token.optional() })
