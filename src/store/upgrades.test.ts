import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, inject, it } from 'vitest'
import { expectOk } from '../kernel/index.js'
import type { Store } from '../lab/index.js'
import { type Database, newestDataVersion, openStore } from './index.js'
import { tempFolders } from './suite/folders.js'
import { linesOf, NOON, streamOf, thermometerOf, timeOf, world } from './suite/house.js'
import { freshDatabase } from './suite/postgres-server.js'

const stages = fileURLToPath(new URL('../../test/upgrades/', import.meta.url))
const linesOfStage = (name: string) => readFileSync(`${stages}${name}`, 'utf8').split('\n')

const folder = tempFolders()
const engines: Record<string, () => Promise<Database>> = {
  SQLite: async () => ({ kind: 'sqlite', file: `${folder()}/data.db` }),
  PostgreSQL: async () => ({ kind: 'postgres', url: await freshDatabase(inject('postgres')) }),
}

/** What each stage's file holds, in the words of today's ports. */
const contents: Record<string, (store: Store) => Promise<void>> = { 'stage-1.ndjson': stageOne }

it('knows what every stage’s file holds', () => {
  const files = readdirSync(stages).filter((name) => name.endsWith('.ndjson'))
  expect(files).toEqual(Object.keys(contents))
})

describe.each(Object.keys(engines))('on %s', (engine) => {
  it.each(Object.keys(contents))('the data of %s is upgraded whole', async (stage) => {
    const store = expectOk(await openStore((await engines[engine]?.()) as Database, world(8)))
    const restored = expectOk(await store.restore(streamOf(linesOfStage(stage))))
    expect(restored.dataVersion).toBe(newestDataVersion)
    await contents[stage]?.(store)
    const lines = await linesOf(store)
    expect(JSON.parse(lines[0] ?? '').dataVersion).toBe(newestDataVersion)
    await store.close()
  })
})

/** The house as the first stage could keep it: times, thermometers, a device, the feed. */
async function stageOne(store: Store): Promise<void> {
  const benches = await store.read('', (rooms) => rooms.house.benches())
  expect(benches).toMatchObject([{ kind: 'own', name: 'Cellar', units: 'metric', paper: 'A4', zone: 'Europe/Zurich' }])
  await store.read(benches[0]?.id ?? '', async (rooms) => {
    const [time] = await rooms.times.all()
    const id = time?.id ?? ''
    expect(time).toEqual(timeOf(id, 2, { note: 'corrected', coefficient: null }))
    expect(await rooms.times.revision(id, 1)).toEqual(timeOf(id))
    const [dial, spirit] = await rooms.kit.all()
    expect(dial).toEqual(thermometerOf(dial?.id ?? '', 1, { name: 'Dial', kind: 'dial' }))
    expect(spirit).toEqual(thermometerOf(spirit?.id ?? ''))
    const checks = await rooms.kit.checks()
    expect(checks).toMatchObject([
      { thermometerId: spirit?.id, at: NOON, method: 'ice', read: 0.3, true: 0, setId: null, withdrawn: true },
      { thermometerId: dial?.id, at: NOON + 5, method: 'ice', read: 0.3, true: 0, withdrawn: false },
    ])
    expect(checks[1]?.setId).toMatch(/^[0-9a-f-]{36}$/)
    const [device] = await rooms.people.devices()
    expect(device).toMatchObject({ name: 'Phone', pairedAt: NOON, lastSeenAt: null, removedAt: null })
    expect(await rooms.people.deviceByToken(`hash of ${device?.id}`)).toEqual(device)
    expect(await rooms.feed.after(0, 10)).toEqual([
      { seq: 1, kind: 'times', subject: id, at: NOON },
      { seq: 2, kind: 'thermometers', subject: spirit?.id, at: NOON + 1 },
    ])
  })
}
