import { join } from 'node:path'
import { afterAll } from 'vitest'
import { expectOk, idsFrom, ok, type Result, SeededRandom, SetClock } from '../../src/kernel/index.js'
import { type Context, newBench, type Rooms, type Store } from '../../src/lab/index.js'
import { openStore } from '../../src/store/index.js'
import type { AddCheck, ThermometerStatement, TimeStatement } from '../../src/wire/index.js'
import { tempFolders } from './folders.js'

/** 2026-03-01T12:00:00Z */
export const NOON = 1_772_366_400_000

/** A bench on a true SQLite file, with a clock that is set by hand. */
export interface Bench {
  readonly store: Store
  readonly context: Context
  readonly clock: SetClock
  write<T>(work: (context: Context, rooms: Rooms) => Promise<Result<T>>): Promise<Result<T>>
  read<T>(work: (rooms: Rooms) => Promise<T>): Promise<T>
  /** Everything kept, line by line, without the lines that carry the moment of the backup. */
  everything(): Promise<string[]>
}

/** Opens benches that are closed and gone after the file's tests. */
export function benches(): (seed: number) => Promise<Bench> {
  const folder = tempFolders()
  const open: Store[] = []
  afterAll(async () => {
    for (const store of open) await store.close()
  })
  return async (seed) => {
    const clock = new SetClock(NOON)
    const ids = idsFrom(clock, new SeededRandom(seed))
    const store = expectOk(await openStore({ kind: 'sqlite', file: join(folder(), 'wetside.db') }, { clock, ids }))
    open.push(store)
    const context: Context = { actor: { role: 'owner', id: 'owner' }, bench: ids.next(), clock, ids }
    const write: Bench['write'] = (work) => store.write(context, null, (rooms) => work(context, rooms))
    const read: Bench['read'] = (work) => store.read(context.bench, work)
    expectOk(
      await write(async (_, rooms) => ok(await rooms.house.addBench(newBench(context.bench, 'own', NOON, 'Cellar')))),
    )
    return { store, context, clock, write, read, everything: () => everythingIn(store) }
  }
}

/** The rows of a backup: two of these are equal exactly when nothing was changed in between. */
export async function everythingIn(store: Store): Promise<string[]> {
  let file = ''
  for await (const line of store.backup()) file += line
  return file.trimEnd().split('\n').slice(1, -1)
}

export const time = (changes: Partial<TimeStatement> = {}): TimeStatement => ({
  film: 'Corvane 400',
  exposure_index: 400,
  developer: 'ascorbate',
  dilution_parts: [1, 3],
  agitation: 'first 30 s, then 5 s each minute',
  kind: 'ordinary',
  law: 'exponential',
  developer_class: 'unknown',
  coefficient: null,
  usable: null,
  window: null,
  points: [
    { temperature_c: 20, time_s: 570 },
    { temperature_c: 24, time_s: 405 },
  ],
  source_words: 'an invented sheet',
  source_origin: 'sheet',
  note: '',
  ...changes,
})

export const thermometer = (changes: Partial<ThermometerStatement> = {}): ThermometerStatement => ({
  name: 'Spirit over the sink',
  kind: 'spirit',
  scale_low_c: -10,
  scale_high_c: 110,
  note: '',
  ...changes,
})

export const comparison = (read_c: number, true_c: number): AddCheck => ({ method: 'comparison', read_c, true_c })

/** The problem of a result that has to be one. */
export function problemOf<T>(result: Result<T>) {
  if (result.ok) throw new Error(`Expected a refusal, got ${JSON.stringify(result.value)}`)
  return result.problem
}
