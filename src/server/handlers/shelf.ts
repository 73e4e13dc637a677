import { ok, type Result } from '../../kernel/index.js'
import {
  addContainer,
  correctContainer,
  correctProduct,
  costOfRun,
  discard,
  findLots,
  finishMix,
  getLot,
  handOver,
  keepProduct,
  listProducts,
  lotByCode,
  measureContents,
  movePortion,
  pairOfBaths,
  removeContainer,
  removeProduct,
  rotateBaths,
  type Stated,
  shelf,
  startingProducts,
  stationBath,
  takeBack,
  testBath,
  undoContainer,
  undoProduct,
  useBath,
  viewOfProduct,
  washFromBottle,
} from '../../lab/index.js'
import type { ProductStatement, routesOfShelf } from '../../wire/index.js'
import { type Handlers, read, write, writer } from '../call.js'

const product = async (done: Promise<Result<Stated<ProductStatement>>>) => {
  const kept = await done
  return kept.ok ? ok(viewOfProduct(kept.value)) : kept
}

export const shelfHandlers: Handlers<keyof typeof routesOfShelf> = {
  listProducts: async (call) => ok(await read(call, listProducts)),
  startingProducts: async () => ok(startingProducts()),
  keepProduct: (call) => write(call, (context, rooms) => product(keepProduct(context, rooms, call.body))),
  correctProduct: ({ params, body, ...call }) =>
    write(call, (context, rooms) =>
      product(correctProduct(context, rooms, params.id, body.seen_revision, body.statement)),
    ),
  removeProduct: ({ params, body, ...call }) =>
    write(call, (context, rooms) => product(removeProduct(context, rooms, params.id, body.seen_revision))),
  undoProduct: ({ params, body, ...call }) =>
    write(call, (context, rooms) => product(undoProduct(context, rooms, params.id, body.seen_revision))),
  shelf: async (call) => ok(await read(call, (rooms) => shelf(call.context, rooms))),
  addContainer: (call) => write(call, (context, rooms) => addContainer(context, rooms, call.body)),
  correctContainer: ({ params, body, ...call }) =>
    write(call, (context, rooms) => correctContainer(context, rooms, params.id, body.seen_revision, body.statement)),
  removeContainer: ({ params, body, ...call }) =>
    write(call, (context, rooms) => removeContainer(context, rooms, params.id, body.seen_revision)),
  undoContainer: ({ params, body, ...call }) =>
    write(call, (context, rooms) => undoContainer(context, rooms, params.id, body.seen_revision)),
  findLots: (call) => read(call, (rooms) => findLots(rooms, call.body)),
  getLot: (call) => read(call, (rooms) => getLot(call.context, rooms, call.params.id)),
  lotByCode: (call) => read(call, (rooms) => lotByCode(call.context, rooms, call.query.code)),
  finishMix: (call) => write(call, (context, rooms) => finishMix(context, rooms, call.body)),
  useBath: (call) => write(call, (context, rooms) => useBath(context, rooms, call.body)),
  testBath: (call) => write(call, (context, rooms) => testBath(context, rooms, call.body)),
  stationBath: (call) => write(call, (context, rooms) => stationBath(context, rooms, call.body)),
  movePortion: (call) => write(call, (context, rooms) => movePortion(context, rooms, call.body)),
  measureContents: (call) => write(call, (context, rooms) => measureContents(context, rooms, call.body)),
  discard: (call) => write(call, (context, rooms) => discard(context, rooms, call.body)),
  handOver: (call) => write(call, (context, rooms) => handOver(context, rooms, call.body)),
  pairOfBaths: (call) => read(call, (rooms) => pairOfBaths(call.context, rooms, call.body)),
  rotateBaths: (call) => write(call, (context, rooms) => rotateBaths(context, rooms, call.body)),
  washFromBottle: async (call) => {
    const words = await writer(call)
    return read(call, (rooms) => washFromBottle(call.context, rooms, call.body, words))
  },
  costOfRun: (call) => read(call, (rooms) => costOfRun(rooms, call.params.id)),
  takeBack: (call) => write(call, (context, rooms) => takeBack(context, rooms, call.params.id, call.body.note)),
}
