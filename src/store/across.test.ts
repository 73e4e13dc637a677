import { expect, inject, it } from 'vitest'
import { expectOk } from '../kernel/index.js'
import type { Store } from '../lab/index.js'
import { openStore } from './index.js'
import { tempFolders } from './suite/folders.js'
import { furnished, linesOf, NOON, streamOf, world } from './suite/house.js'
import { freshDatabase } from './suite/postgres-server.js'

const folder = tempFolders()

/** Opens an empty store whose clock stands at `now`. */
async function emptyStore(kind: 'sqlite' | 'postgres', now: number): Promise<Store> {
  const { clock, ids } = world(6)
  clock.advance(now - NOON)
  if (kind === 'sqlite') return expectOk(await openStore({ kind, file: `${folder()}/data.db` }, { clock, ids }))
  return expectOk(await openStore({ kind, url: await freshDatabase(inject('postgres')) }, { clock, ids }))
}

/** A backup without its moment and without the checksum, which covers the moment. */
const timeless = (lines: readonly string[]): string[] =>
  lines.map((line) => line.replace(/"madeAt":"[^"]+"/, '').replace(/"sha256":"[^"]+"/, ''))

it('moves a whole house from SQLite to PostgreSQL and back without a difference', async () => {
  const [home, lab, back] = [
    await emptyStore('sqlite', NOON),
    await emptyStore('postgres', NOON + 1000),
    await emptyStore('sqlite', NOON + 2000),
  ]
  const first = world(7)
  const context = await furnished(home, first)
  await furnished(home, first)
  const lines = await linesOf(home)
  expect(await lab.restore(streamOf(lines))).toMatchObject({ ok: true, value: { rows: lines.length - 2 } })
  const inLab = await linesOf(lab)
  expect(inLab[0]).toContain(new Date(NOON + 1000).toISOString())
  expect(timeless(inLab)).toEqual(timeless(lines))
  expect(await back.restore(streamOf(inLab))).toMatchObject({ ok: true })
  expect(timeless(await linesOf(back))).toEqual(timeless(lines))
  const everything = (store: Store) =>
    store.read(context.bench, async (rooms) => ({
      benches: await rooms.house.benches(),
      times: await rooms.times.all(),
      thermometers: await rooms.kit.all(),
      checks: await rooms.kit.checks(),
      recipes: await rooms.recipes.all(),
      runs: await Promise.all(
        (await rooms.runs.newest({ film: null, ended: null, practice: null, before: null, most: 10 })).map(
          async (run) => [run, await rooms.runs.events(run.id, 0), await rooms.runs.verdicts([run.id])],
        ),
      ),
      devices: await rooms.people.devices(),
      feed: await rooms.feed.after(0, 100),
    }))
  const kept = await everything(home)
  expect([kept.times, kept.recipes, kept.runs].map((list) => list.length)).toEqual([1, 1, 1])
  expect(await everything(lab)).toEqual(kept)
  expect(await everything(back)).toEqual(kept)
  await Promise.all([home.close(), lab.close(), back.close()])
})
