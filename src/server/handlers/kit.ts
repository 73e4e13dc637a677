import { ok } from '../../kernel/index.js'
import {
  addClassSet,
  addThermometer,
  checkThermometer,
  correctThermometer,
  listThermometers,
  removeThermometer,
  undoThermometer,
  withdrawCheck,
} from '../../lab/index.js'
import { type Handlers, read, write } from '../call.js'

type Names =
  | 'listThermometers'
  | 'addThermometer'
  | 'correctThermometer'
  | 'removeThermometer'
  | 'undoThermometer'
  | 'checkThermometer'
  | 'withdrawCheck'
  | 'addClassSet'

export const kitHandlers: Handlers<Names> = {
  listThermometers: async (call) => ok(await read(call, listThermometers)),
  addThermometer: (call) => write(call, (context, rooms) => addThermometer(context, rooms, call.body)),
  correctThermometer: (call) =>
    write(call, (context, rooms) =>
      correctThermometer(context, rooms, call.params.id, call.body.seen_revision, call.body.statement),
    ),
  removeThermometer: (call) =>
    write(call, (context, rooms) => removeThermometer(context, rooms, call.params.id, call.body.seen_revision)),
  undoThermometer: (call) =>
    write(call, (context, rooms) => undoThermometer(context, rooms, call.params.id, call.body.seen_revision)),
  checkThermometer: (call) =>
    write(call, (context, rooms) => checkThermometer(context, rooms, call.params.id, call.body)),
  withdrawCheck: (call) => write(call, (context, rooms) => withdrawCheck(context, rooms, call.params.id)),
  addClassSet: (call) => write(call, (context, rooms) => addClassSet(context, rooms, call.body)),
}
