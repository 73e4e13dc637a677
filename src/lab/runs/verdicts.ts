import { failed, ok, problem, type Result } from '../../kernel/index.js'
import type { JudgeRun, Run as View } from '../../wire/index.js'
import type { Context } from '../context.js'
import type { Rooms } from '../store.js'
import { runView } from './queries.js'
import { standingRun } from './standing.js'

/** Notes what the negatives of a tank look like. What was said before stays and no longer stands. */
export async function judgeRun(context: Context, rooms: Rooms, id: string, said: JudgeRun): Promise<Result<View>> {
  const run = await standingRun(rooms, id, true)
  if (!run.ok) return run
  const tanks = run.value.plan.tanks.map(({ conditions }) => conditions.tank)
  if (!tanks.includes(said.tank))
    return failed(problem('run.unknown-tank', { tank: said.tank, tanks: tanks.join(', ') }, 'tank'))
  const now = context.clock.now()
  await rooms.runs.addVerdict({ ...said, id: context.ids.next(), runId: id, at: now, by: context.actor.id })
  await rooms.feed.tell({ kind: 'runs', subject: id }, now)
  return ok(await runView(rooms, run.value, now))
}
