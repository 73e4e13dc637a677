import { failed, type Instant, isZone, ok, problem, type Result, type UnitSystem } from '../../kernel/index.js'
import type { BenchView, Settings } from '../../wire/index.js'
import type { Context } from '../context.js'
import type { Rooms } from '../store.js'
import type { Bench } from './port.js'

/** A bench as it starts: metric, A4, UTC until its owner says otherwise. */
export const newBench = (id: string, kind: Bench['kind'], at: Instant, name: string): Bench => ({
  id,
  kind,
  name,
  units: 'metric' as UnitSystem,
  paper: 'A4',
  zone: 'UTC',
  createdAt: at,
})

/** The house's own bench; made where there is none yet. Gives its id. */
export async function settleBench(context: Context, rooms: Rooms, zone: string): Promise<string> {
  const own = (await rooms.house.benches()).find((bench) => bench.kind === 'own')
  if (own !== undefined) return own.id
  await rooms.house.addBench({ ...newBench(context.bench, 'own', context.clock.now(), 'My bench'), zone })
  return context.bench
}

export async function benchView(context: Context, rooms: Rooms): Promise<BenchView> {
  const benches = await rooms.house.benches()
  const bench = benches.find((candidate) => candidate.id === context.bench)
  if (bench === undefined) throw new Error(`The request was given bench ${context.bench}, which does not exist.`)
  return {
    bench_id: bench.id,
    kind: bench.kind,
    name: bench.name,
    units: bench.units,
    paper: bench.paper,
    zone: bench.zone,
    demo_exists: benches.some((candidate) => candidate.kind === 'demo'),
    role: context.actor.role === 'owner' ? 'owner' : 'device',
  }
}

export async function changeSettings(context: Context, rooms: Rooms, settings: Settings): Promise<Result<BenchView>> {
  if (!isZone(settings.zone)) return failed(problem('house.zone-unknown', { zone: settings.zone }, 'zone'))
  const bench = await rooms.house.bench(context.bench)
  if (bench === null) return failed(problem('record.not-found', { what: 'bench', id: context.bench }))
  await rooms.house.changeBench({ ...bench, ...settings })
  await rooms.feed.tell({ kind: 'bench', subject: bench.id }, context.clock.now())
  return ok(await benchView(context, rooms))
}
