import { celsius, ok } from '../../kernel/index.js'
import {
  answerTime,
  correctTime,
  keepTimes,
  listTimes,
  readTable,
  removeTime,
  standingTime,
  undoTime,
  viewOfTime,
} from '../../lab/index.js'
import { type Handlers, read, write, writer } from '../call.js'
import { card } from './card.js'
import { questionOf } from './question.js'

type Names =
  | 'listTimes'
  | 'keepTimes'
  | 'getTime'
  | 'correctTime'
  | 'removeTime'
  | 'undoTime'
  | 'answerTime'
  | 'timeCard'
  | 'readTable'

export const timesHandlers: Handlers<Names> = {
  listTimes: async (call) => ok(await read(call, listTimes)),
  keepTimes: (call) => write(call, (context, rooms) => keepTimes(context, rooms, call.body.times)),
  getTime: async (call) => {
    const record = await read(call, (rooms) => standingTime(rooms, call.params.id))
    return record.ok ? ok(viewOfTime(record.value)) : record
  },
  correctTime: (call) =>
    write(call, (context, rooms) =>
      correctTime(context, rooms, call.params.id, call.body.seen_revision, call.body.statement),
    ),
  removeTime: (call) =>
    write(call, (context, rooms) => removeTime(context, rooms, call.params.id, call.body.seen_revision)),
  undoTime: (call) =>
    write(call, (context, rooms) => undoTime(context, rooms, call.params.id, call.body.seen_revision)),
  answerTime: async (call) => {
    const words = await writer(call)
    return read(call, (rooms) =>
      answerTime(rooms, call.params.id, questionOf(call.query, celsius(call.query.at_c)), words),
    )
  },
  timeCard: card,
  readTable: async (call) => readTable(call.body.text, await writer(call)),
}
