import { instantText, ok } from '../../kernel/index.js'
import {
  addOrder,
  addOrderLink,
  correctOrder,
  getOrder,
  handBack,
  listOrders,
  orderStanding,
  removeOrder,
  revokeOrderLink,
  undoOrder,
} from '../../lab/index.js'
import { say, writerFor } from '../../words/index.js'
import { type Handlers, read, write } from '../call.js'
import { newToken, sha256 } from '../secrets.js'

type Names =
  | 'listOrders'
  | 'addOrder'
  | 'getOrder'
  | 'correctOrder'
  | 'removeOrder'
  | 'undoOrder'
  | 'handBack'
  | 'makeOrderLink'
  | 'revokeOrderLink'
  | 'orderStanding'

export const orderHandlers: Handlers<Names> = {
  listOrders: async (call) => ok(await read(call, listOrders)),
  addOrder: (call) => write(call, (context, rooms) => addOrder(context, rooms, call.body)),
  getOrder: (call) => read(call, (rooms) => getOrder(rooms, call.params.id)),
  correctOrder: (call) =>
    write(call, (context, rooms) =>
      correctOrder(context, rooms, call.params.id, call.body.seen_revision, call.body.statement),
    ),
  removeOrder: (call) =>
    write(call, (context, rooms) => removeOrder(context, rooms, call.params.id, call.body.seen_revision)),
  undoOrder: (call) =>
    write(call, (context, rooms) => undoOrder(context, rooms, call.params.id, call.body.seen_revision)),
  handBack: (call) => write(call, (context, rooms) => handBack(context, rooms, call.params.id, call.body.counted_out)),
  makeOrderLink: (call) => {
    const token = newToken()
    const asked = { orderId: call.params.id, tokenHash: sha256(token), days: call.body.days }
    return write(call, async (context, rooms) => {
      const link = await addOrderLink(context, rooms, asked)
      return link.ok ? ok({ id: link.value.id, token, expires_at: instantText(link.value.expiresAt) }) : link
    })
  },
  revokeOrderLink: (call) => write(call, (context, rooms) => revokeOrderLink(context, rooms, call.params.id)),
  orderStanding: (call) => {
    const writer = writerFor('metric')
    // A link belongs to the house, whichever bench is open.
    return call.house.store.read(call.house.homeBench, (rooms) =>
      orderStanding(call.context, rooms, sha256(call.params.token), (state) => say('roll.state', { state }, writer)),
    )
  },
}
