import { ok } from '../../kernel/index.js'
import {
  changePattern,
  changeRolls,
  correctRoll,
  findRolls,
  getRoll,
  keepView,
  listViews,
  moveRolls,
  removeView,
  reserveNumbers,
  rollByNumber,
  rollNumbering,
  takeInRolls,
  undoBatch,
  undoRoll,
  viewOfView,
} from '../../lab/index.js'
import type { routesOfRolls } from '../../wire/index.js'
import { type Handlers, read, write } from '../call.js'
import { filmHandlers } from './films.js'
import { orderHandlers } from './orders.js'

type Names = Exclude<keyof typeof routesOfRolls, keyof typeof filmHandlers | keyof typeof orderHandlers>

const handlers: Handlers<Names> = {
  findRolls: (call) => read(call, (rooms) => findRolls(call.context, rooms, call.body)),
  takeInRolls: (call) => write(call, (context, rooms) => takeInRolls(context, rooms, call.body)),
  getRoll: (call) => read(call, (rooms) => getRoll(rooms, call.params.id)),
  rollByNumber: (call) => read(call, (rooms) => rollByNumber(rooms, call.query.number)),
  correctRoll: (call) =>
    write(call, (context, rooms) =>
      correctRoll(context, rooms, call.params.id, call.body.seen_revision, call.body.statement),
    ),
  undoRoll: (call) =>
    write(call, (context, rooms) => undoRoll(context, rooms, call.params.id, call.body.seen_revision)),
  moveRolls: (call) => write(call, (context, rooms) => moveRolls(context, rooms, call.body)),
  changeRolls: (call) => write(call, (context, rooms) => changeRolls(context, rooms, call.body)),
  undoRollBatch: (call) => write(call, (context, rooms) => undoBatch(context, rooms, call.params.id)),
  reserveNumbers: (call) => write(call, (context, rooms) => reserveNumbers(context, rooms, call.body.count)),
  rollNumbering: async (call) => ok(await read(call, rollNumbering)),
  changeNumbering: (call) => write(call, (context, rooms) => changePattern(context, rooms, call.body.pattern)),
  listViews: async (call) => ok(await read(call, listViews)),
  keepView: (call) =>
    write(call, async (context, rooms) => {
      const kept = await keepView(context, rooms, call.body)
      return kept.ok ? ok(viewOfView(kept.value)) : kept
    }),
  removeView: (call) =>
    write(call, async (context, rooms) => {
      const removed = await removeView(context, rooms, call.params.id, call.body.seen_revision)
      return removed.ok ? ok(viewOfView(removed.value)) : removed
    }),
}

export const rollsHandlers: Handlers<keyof typeof routesOfRolls> = { ...handlers, ...orderHandlers, ...filmHandlers }
