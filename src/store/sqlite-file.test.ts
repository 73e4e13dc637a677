import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { dirname } from 'node:path'
import { sql } from 'kysely'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { expectOk } from '../kernel/index.js'
import { openKept } from './engines/kept.js'
import { openSqlite } from './engines/sqlite.js'
import { newestDataVersion, openStore } from './index.js'
import { tempFolders } from './suite/folders.js'
import { furnished, linesOf, world } from './suite/house.js'
import { buildProgram, startHolder } from './suite/processes.js'

const folder = tempFolders()
const at = world(4)
const openFile = (file: string) => openStore({ kind: 'sqlite', file }, at)

describe('one process per file', () => {
  let holder = ''
  beforeAll(async () => {
    holder = await buildProgram('holder')
  })
  afterAll(() => rmSync(dirname(holder), { recursive: true, force: true }))

  it('refuses a second process by name of the file, and lets it in after a proper close', async () => {
    const file = `${folder()}/data.db`
    const store = expectOk(await openFile(file))
    const second = startHolder(holder, file)
    for await (const said of second.lines) {
      expect(said).toMatchObject({ opened: false, code: 'house.data-in-use', sentence: expect.stringContaining(file) })
      break
    }
    await second.kill()
    await store.close()
    const third = startHolder(holder, file)
    for await (const said of third.lines) {
      expect(said.opened).toBe(true)
      break
    }
    expect(await openFile(file)).toMatchObject({ ok: false, problem: { code: 'house.data-in-use' } })
    await third.kill()
  })

  it('is free again the moment its holder is killed, with every acknowledged write and no half one', async () => {
    const file = `${folder()}/data.db`
    for (const writes of [1, 17, 60]) {
      const held = startHolder(holder, file)
      const kept: string[] = []
      let bench = ''
      for await (const said of held.lines) {
        bench = said.bench ?? bench
        if (said.kept) kept.push(said.kept)
        if (kept.length === writes) break
      }
      await held.kill()
      const store = expectOk(await openFile(file))
      const [times, feed] = await store.read(bench, async (r) => [await r.times.all(), await r.feed.after(0, 100_000)])
      const found = new Set(times.map((time) => time.id))
      expect(kept.filter((id) => !found.has(id))).toEqual([])
      expect(times.every((time) => time.points.length === 2)).toBe(true)
      expect(new Set(feed.map((entry) => entry.subject))).toEqual(found)
      await store.close()
    }
  })
})

describe('the data file', () => {
  it('lies in a folder that is made when missing, and survives closing', async () => {
    const file = `${folder()}/a/b/data.db`
    const store = expectOk(await openFile(file))
    await furnished(store, at)
    const lines = await linesOf(store)
    await store.close()
    const again = expectOk(await openFile(file))
    expect(await linesOf(again)).toEqual(lines)
    await again.close()
  })

  it('is written through to the disk on every commit, and held', async () => {
    const engine = expectOk(openSqlite(`${folder()}/data.db`, 'token'))
    const settings: unknown[] = []
    for (const name of ['journal_mode', 'synchronous', 'foreign_keys', 'locking_mode'])
      settings.push(...(await engine.reading((db) => sql`pragma ${sql.raw(name)}`.execute(db))).rows)
    const FULL = 2
    expect(settings).toEqual([
      { journal_mode: 'wal' },
      { synchronous: FULL },
      { foreign_keys: 1 },
      { locking_mode: 'exclusive' },
    ])
    await engine.close()
  })

  it('of a newer version is refused and not changed', async () => {
    const file = `${folder()}/data.db`
    await expectOk(await openFile(file)).close()
    const raw = openKept(file)
    raw.prepare('insert into data_version values (?, 0)').run(newestDataVersion + 1)
    raw.close()
    const answer = await openFile(file)
    const details = { found: newestDataVersion + 1, known: newestDataVersion }
    expect(answer).toMatchObject({ ok: false, problem: { code: 'house.data-newer', details } })
    expect(await openFile(file)).toMatchObject({ ok: false, problem: { code: 'house.data-newer' } })
  })

  it('that is no database is refused and not changed', async () => {
    const file = `${folder()}/data.db`
    const text = 'a shopping list, long enough to be looked at. '.repeat(40)
    writeFileSync(file, text)
    expect(await openFile(file)).toMatchObject({ ok: false, problem: { code: 'house.file-unreadable' } })
    expect(readFileSync(file, 'utf8')).toBe(text)
  })

  it('cannot lie below a file', async () => {
    const base = folder()
    writeFileSync(`${base}/file`, '')
    expect(await openFile(`${base}/file/data.db`)).toMatchObject({
      ok: false,
      problem: { code: 'house.file-unwritable' },
    })
    mkdirSync(`${base}/data.db`)
    expect(await openFile(`${base}/data.db`)).toMatchObject({ ok: false, problem: { code: 'house.file-unreadable' } })
  })

  it('has nothing left beside it by a backup, half read or killed', async () => {
    const base = folder()
    const file = `${base}/data.db`
    const store = expectOk(await openFile(file))
    for await (const _ of store.backup()) break
    await linesOf(store)
    await store.close()
    expect(readdirSync(base)).toEqual(['data.db'])
    writeFileSync(`${file}.snapshot-of-a-killed-process-0`, '')
    await expectOk(await openFile(file)).close()
    expect(readdirSync(base)).toEqual(['data.db'])
  })
})
