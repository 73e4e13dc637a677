import { failed, ok, problem, type Result } from '../../kernel/index.js'
import { plan, type Score } from '../../score/index.js'
import type { RunPlan } from '../../wire/index.js'
import type { Rooms } from '../store.js'
import type { RunRecord } from './port.js'

/** The score of a plan: the same one as on the phone that follows it. */
export const scoreOf = ({ tanks }: Pick<RunPlan, 'tanks'>): Result<Score> => plan(tanks)

/** A run of this bench; `held` keeps everybody else from adding to it until this write ends. */
export async function standingRun(rooms: Rooms, id: string, held = false): Promise<Result<RunRecord>> {
  const run = await (held ? rooms.runs.hold(id) : rooms.runs.run(id))
  return run === null ? failed(problem('record.not-found', { what: 'run', id })) : ok(run)
}
