import { BENCH } from './roles.js'
import { IdParams } from './schemas/common.js'
import * as paper from './schemas/roll-paper.js'

const read = { method: 'GET', roles: BENCH, writes: false } as const

/** Routes of what is printed for rolls. */
export const routesOfRollPaper = {
  rollStickers: {
    ...read,
    path: '/api/rolls/stickers.pdf',
    summary: 'Paired stickers to print: two a roll, one for the roll and one for its envelope.',
    query: paper.StickersQuery,
    answer: 'application/pdf',
  },
  orderSlip: {
    ...read,
    path: '/api/orders/:id/slip.pdf',
    summary: 'The slip of an order to print; with the token of a link that stands, with its code.',
    params: IdParams,
    query: paper.SlipQuery,
    answer: 'application/pdf',
  },
} as const
