import { failed, ok, problem, type Result } from '../../kernel/index.js'
import type { Context } from '../context.js'
import { addThermometer, checkThermometer } from '../kit/commands.js'
import type { Rooms } from '../store.js'
import { keepTimes } from '../times/commands.js'
import { newBench } from './bench.js'
import { DEMO_BENCH, DEMO_THERMOMETERS, DEMO_TIMES } from './demo-data.js'
import { furnishRolls } from './demo-rolls.js'
import { furnishRuns } from './demo-runs.js'
import { furnishShelf } from './demo-shelf.js'

/** Makes the demo bench under the context's bench id; one that is there already is joined as it stands. */
export async function openDemo(context: Context, rooms: Rooms): Promise<Result<{ bench_id: string }>> {
  const benches = await rooms.house.benches()
  const there = benches.find((bench) => bench.kind === 'demo')
  if (there !== undefined) return ok({ bench_id: there.id })
  const like = benches[0]
  await rooms.house.addBench({
    ...newBench(context.bench, 'demo', context.clock.now(), DEMO_BENCH),
    ...(like && { units: like.units, paper: like.paper, zone: like.zone }),
  })
  return furnish(context, rooms)
}

/** Puts the invented times, thermometers, runs, rolls and bottles on a bench, by the same commands people use. */
async function furnish(context: Context, rooms: Rooms): Promise<Result<{ bench_id: string }>> {
  const times = await keepTimes(context, rooms, DEMO_TIMES)
  if (!times.ok) return times
  for (const { statement, checks } of DEMO_THERMOMETERS) {
    const added = await addThermometer(context, rooms, statement)
    if (!added.ok) return added
    for (const check of checks) {
      const noted = await checkThermometer(context, rooms, added.value.id, check)
      if (!noted.ok) return noted
    }
  }
  const [first] = times.value.times
  const runs = first === undefined ? ok(null) : await furnishRuns(context, rooms, first.id)
  if (!runs.ok) return runs
  const rolls = await furnishRolls(context, rooms)
  if (!rolls.ok) return rolls
  const shelf = await furnishShelf(context, rooms)
  return shelf.ok ? ok({ bench_id: context.bench }) : shelf
}

/** Removes the demo bench with everything on it. */
export async function removeDemo(rooms: Rooms): Promise<Result<{ bench_id: string }>> {
  const demo = (await rooms.house.benches()).find((bench) => bench.kind === 'demo')
  if (demo === undefined) return failed(problem('house.demo-not-open'))
  await rooms.house.removeBench(demo.id)
  return ok({ bench_id: demo.id })
}
