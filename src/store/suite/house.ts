import { celsius, expectOk, type Ids, idsFrom, ok, SeededRandom, SetClock, seconds } from '../../kernel/index.js'
import type { Bench, Context, Rooms, Store, ThermometerRecord, TimeRecord } from '../../lab/index.js'
import { furnishRolls } from './roll-samples.js'
import { eventOf, recipeOf, runOf } from './run-samples.js'
import { filledBottle } from './shelf-samples.js'

/** Opens a store on empty data; the suites run the same over both engines. */
export type Open = () => Promise<Store>

/** 2026-03-01T12:00:00Z */
export const NOON = 1_772_366_400_000

/** A repeatable clock and ids. Each test file has its own seed, so ids never meet. */
export function world(seed: number): { clock: SetClock; ids: Ids } {
  const clock = new SetClock(NOON)
  return { clock, ids: idsFrom(clock, new SeededRandom(seed)) }
}

export const benchNamed = (id: string, name: string, kind: Bench['kind'] = 'own'): Bench => ({
  id,
  kind,
  name,
  units: 'metric',
  paper: 'A4',
  zone: 'Europe/Zurich',
  createdAt: NOON,
})

/** A context at a new bench of the store. */
export async function newBench(
  store: Store,
  { clock, ids }: ReturnType<typeof world>,
  kind: Bench['kind'] = 'own',
): Promise<Context> {
  const context: Context = { actor: { role: 'owner', id: 'owner' }, bench: ids.next(), clock, ids }
  await keep(store, context, (rooms) => rooms.house.addBench(benchNamed(context.bench, 'Cellar', kind)))
  return context
}

/** A write without key that succeeds, and its value. */
export async function keep<T>(store: Store, context: Context, work: (rooms: Rooms) => Promise<T>): Promise<T> {
  return expectOk(await store.write(context, null, async (rooms) => ok(await work(rooms))))
}

export const timeOf = (id: string, revision = 1, changes: Partial<TimeRecord> = {}): TimeRecord => ({
  id,
  revision,
  savedAt: NOON + revision,
  savedBy: 'owner',
  removed: false,
  film: 'Panchromatic 100',
  exposureIndex: 80,
  developer: 'Metol–hydroquinone, stock',
  dilutionParts: [1, 4.5],
  agitation: 'first 30 s, then 10 s each minute',
  kind: 'ordinary',
  law: 'arrhenius',
  developerClass: 'metol-hydroquinone',
  coefficient: 2.414213562373095,
  usable: { from: celsius(16), to: celsius(26.5) },
  window: null,
  points: [
    { temperature: celsius(20), time: seconds(570) },
    { temperature: celsius(18.333), time: seconds(690.5) },
  ],
  sourceWords: 'sheet of March 2025, “page 2” — 現像',
  sourceOrigin: 'sheet',
  note: "line one\nline 'two'; --",
  ...changes,
})

export const thermometerOf = (
  id: string,
  revision = 1,
  changes: Partial<ThermometerRecord> = {},
): ThermometerRecord => ({
  id,
  revision,
  savedAt: NOON + revision,
  savedBy: 'owner',
  removed: false,
  name: 'Spirit, blue cap',
  kind: 'spirit',
  scaleLow: celsius(-10.25),
  scaleHigh: celsius(50),
  note: '',
  ...changes,
})

/** The lines of a backup without their line feeds. */
export async function linesOf(store: Store): Promise<string[]> {
  let file = ''
  for await (const line of store.backup()) file += line
  return file.replace(/\n$/, '').split('\n')
}

export async function* streamOf(lines: readonly string[]): AsyncGenerator<string> {
  yield* lines
}

/** A small bench with something in every table: revisions, removals, checks, a device, the feed. */
export async function furnished(store: Store, at: ReturnType<typeof world>): Promise<Context> {
  const context = await newBench(store, at)
  const id = () => at.ids.next()
  const [film, gone, spirit, dial, check, device] = [id(), id(), id(), id(), id(), id()]
  const [list, run] = [id(), id()]
  await keep(store, context, async (rooms) => {
    await rooms.times.addRevision(timeOf(film))
    await rooms.times.addRevision(timeOf(film, 2, { note: 'corrected', coefficient: null }))
    await rooms.times.addRevision(
      timeOf(gone, 1, { film: 'Ortho 25', exposureIndex: null, dilutionParts: null, usable: null }),
    )
    await rooms.times.addRevision(timeOf(gone, 2, { removed: true, points: [] }))
    await rooms.kit.addRevision(thermometerOf(spirit))
    await rooms.kit.addRevision(thermometerOf(dial, 1, { name: 'Dial', kind: 'dial' }))
    const read = {
      by: 'owner',
      method: 'ice',
      read: celsius(0.3),
      true: celsius(0),
      setId: null,
      withdrawn: false,
    } as const
    await rooms.kit.addCheck({ ...read, id: check, thermometerId: spirit, at: NOON })
    await rooms.kit.addCheck({ ...read, id: id(), thermometerId: dial, at: NOON + 5, setId: id() })
    await rooms.kit.withdrawCheck(check, id(), NOON + 9, device)
    const seen = { tokenHash: `hash of ${device}`, pairedAt: NOON, lastSeenAt: null, removedAt: null }
    await rooms.people.addDevice({ ...seen, id: device, name: 'Phone' })
    await rooms.people.addPairingCode({ codeHash: `code of ${device}`, expiresAt: NOON + 600_000 }, NOON)
    await rooms.recipes.addRevision(recipeOf(list))
    await rooms.runs.add(runOf(run))
    const heard = { receivedAt: NOON + 3, receivedBy: device, event: eventOf(id()) }
    await rooms.runs.append(run, [heard], { state: 'running', startedAt: NOON, endedAt: null })
    const verdict = { tank: 'A', density: 'thin', marks: ['streaks'], note: '' } as const
    await rooms.runs.addVerdict({ ...verdict, marks: [...verdict.marks], id: id(), runId: run, at: NOON, by: 'owner' })
    await furnishRolls(rooms, at.ids, NOON)
    await filledBottle(rooms, at.ids, NOON, 900_000)
    await rooms.feed.tell({ kind: 'times', subject: film }, NOON)
    await rooms.feed.tell({ kind: 'thermometers', subject: spirit }, NOON + 1)
  })
  return context
}
