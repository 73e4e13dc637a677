import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, inject, it } from 'vitest'
import { expectOk } from '../kernel/index.js'
import type { Store } from '../lab/index.js'
import { type Database, newestDataVersion, openStore } from './index.js'
import { tempFolders } from './suite/folders.js'
import { linesOf, streamOf, world } from './suite/house.js'
import { freshDatabase } from './suite/postgres-server.js'
import { stageFour, stageOne, stageThree, stageTwo } from './suite/stages.js'

const stages = fileURLToPath(new URL('../../test/upgrades/', import.meta.url))
const linesOfStage = (name: string) => readFileSync(`${stages}${name}`, 'utf8').split('\n')

const folder = tempFolders()
const engines: Record<string, () => Promise<Database>> = {
  SQLite: async () => ({ kind: 'sqlite', file: `${folder()}/data.db` }),
  PostgreSQL: async () => ({ kind: 'postgres', url: await freshDatabase(inject('postgres')) }),
}

/** What each stage's file holds, in the words of today's ports. */
const contents: Record<string, (store: Store) => Promise<void>> = {
  'stage-1.ndjson': stageOne,
  'stage-2.ndjson': stageTwo,
  'stage-3.ndjson': stageThree,
  'stage-4.ndjson': stageFour,
}

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
