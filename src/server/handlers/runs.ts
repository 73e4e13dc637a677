import { ok } from '../../kernel/index.js'
import { abandonRun, addRunEvents, eventsAfter, getRun, judgeRun, listRuns, planRun } from '../../lab/index.js'
import { type Handlers, read, write } from '../call.js'
import { streamRun } from '../feed.js'
import { runRecordPaper, runSheet } from './run-papers.js'

type Names =
  | 'listRuns'
  | 'planRun'
  | 'getRun'
  | 'runEvents'
  | 'addRunEvents'
  | 'followRun'
  | 'abandonRun'
  | 'judgeRun'
  | 'runSheet'
  | 'runRecord'

const PAGE = 20

export const runsHandlers: Handlers<Names> = {
  listRuns: async (call) => {
    const { film, ended, practice, before, limit } = call.query
    const wanted = {
      film: film ?? null,
      ended: ended ?? null,
      practice: practice ?? null,
      before: before ?? null,
      most: limit ?? PAGE,
    }
    return ok(await read(call, (rooms) => listRuns(rooms, wanted, call.house.clock.now())))
  },
  planRun: (call) => write(call, (context, rooms) => planRun(context, rooms, call.body)),
  getRun: (call) => read(call, (rooms) => getRun(rooms, call.params.id, call.house.clock.now())),
  runEvents: (call) => read(call, (rooms) => eventsAfter(rooms, call.params.id, call.query.after ?? 0)),
  addRunEvents: (call) =>
    write(call, (context, rooms) => addRunEvents(context, rooms, call.params.id, call.body.events)),
  followRun: ({ house, context, params, query, request, reply }) =>
    streamRun(house, context.bench, { id: params.id, seen: query.after ?? 0 }, request, reply),
  abandonRun: (call) => write(call, (context, rooms) => abandonRun(context, rooms, call.params.id, call.body.reason)),
  judgeRun: (call) => write(call, (context, rooms) => judgeRun(context, rooms, call.params.id, call.body)),
  runSheet,
  runRecord: runRecordPaper,
}
