import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Kysely, PostgresDialect } from 'kysely'
import pg from 'pg'
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest'
import { expectOk } from '../kernel/index.js'
import { openStore } from './index.js'
import { roomsOf } from './rooms/index.js'
import type { Schema } from './schema.js'
import { newBench, world } from './suite/house.js'
import { freshDatabase } from './suite/postgres-server.js'
import { buildProgram, type Serving, startServing } from './suite/processes.js'

const CLIENTS = 4
/** Requests of one client that are under way at once. */
const AT_ONCE = 3
/** Six hundred in the gate, five thousand in the long run. */
const LONG = process.env['WETSIDE_FUZZ'] !== undefined
const ROLLS = LONG ? 5000 : 600
const PER_REQUEST = 10
const PATIENCE_MS = LONG ? 900_000 : 120_000

let program: string
const folder = mkdtempSync(join(tmpdir(), 'wetside-numbers-'))
const running: Serving[] = []
beforeAll(async () => {
  program = await buildProgram('serving')
})
afterAll(async () => {
  await Promise.all(running.map((server) => server.stop()))
  rmSync(folder, { recursive: true, force: true })
})

async function servers(count: number, environment: Record<string, string>): Promise<readonly string[]> {
  const started = await Promise.all(
    Array.from({ length: count }, (_, i) =>
      startServing(program, { DATA_DIR: join(folder, `${running.length + i}`), ...environment }),
    ),
  )
  running.push(...started)
  return started.map(({ url }) => url)
}

interface Kept {
  readonly id: string
  readonly number: string
  readonly twin: number | null
}

async function post<T>(url: string, path: string, body: object): Promise<T> {
  const answer = await fetch(url + path, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(body),
  })
  const text = await answer.text()
  if (!answer.ok) throw new Error(`${path}: ${answer.status} ${text.slice(0, 300)}`)
  return JSON.parse(text) as T
}

const statement = (whose: string | null) => ({ film: 'Tarn 100', process: 'black-and-white', format: '135', whose })

/** One client takes its share in, each other request of somebody else's film; the first ones from a block of its own. */
async function client(url: string): Promise<Kept[]> {
  const block = await post<{ block_id: string; first: number }>(url, '/api/roll-numbers/reserve', {
    count: PER_REQUEST,
  })
  let requests = ROLLS / CLIENTS / PER_REQUEST
  const kept: Kept[] = []
  const lane = async () => {
    while (requests > 0) {
      const place = requests--
      const numberOf = (i: number) => (place === 1 ? { block_id: block.block_id, n: block.first + i } : null)
      const rolls = Array.from({ length: PER_REQUEST }, (_, i) => ({
        statement: statement(place % 2 === 0 ? 'Ida' : null),
        number: numberOf(i),
      }))
      kept.push(...(await post<{ rolls: Kept[] }>(url, '/api/rolls', { rolls })).rolls)
    }
  }
  await Promise.all(Array.from({ length: AT_ONCE }, lane))
  return kept
}

const counting = (numbers: readonly number[]) => [...numbers].sort((a, b) => a - b)
const upTo = (last: number) => Array.from({ length: last }, (_, i) => i + 1)

/** Every number once and none left out, as those who took in were told and as the register then has it. */
async function registerAll(urls: readonly string[]): Promise<void> {
  const told = (
    await Promise.all(Array.from({ length: CLIENTS }, (_, i) => client(urls[i % urls.length] as string)))
  ).flat()
  expect(counting(told.map(({ number }) => Number(number.split('-')[1])))).toEqual(upTo(ROLLS))
  const twins = counting(told.flatMap(({ twin }) => twin ?? []))
  expect(twins).toEqual(upTo(twins.length))
  expect(twins.length).toBeGreaterThan(ROLLS / 3)
  const answer = await fetch(`${urls[0]}/api/rolls/register`)
  const { rolls } = (await answer.json()) as { rolls: Kept[] }
  const plain = (list: readonly Kept[]) => list.map(({ id, number, twin }) => `${number} ${twin} ${id}`).sort()
  expect(plain(rolls)).toEqual(plain(told))
}

describe(`${ROLLS} rolls taken in at once`, () => {
  it('by four servers on PostgreSQL: no number twice, none lost', { timeout: PATIENCE_MS }, async () => {
    const urls = await servers(CLIENTS, { DATABASE_URL: await freshDatabase(inject('postgres')) })
    await registerAll(urls)
  })

  it('by four clients on SQLite: no number twice, none lost', { timeout: PATIENCE_MS }, async () => {
    await registerAll(await servers(1, {}))
  })
})

/**
 * The writes of a bench queue for it, which would hide a count that reads first and writes afterwards. Here nobody
 * queues: the numbering is asked for by itself.
 */
it('numbers counted on four connections that do not queue for the bench are all different', async () => {
  const at = world(44)
  const url = await freshDatabase(inject('postgres'))
  const store = expectOk(await openStore({ kind: 'postgres', url }, at))
  const { bench } = await newBench(store, at)
  const pool = new pg.Pool({ connectionString: url, max: CLIENTS })
  const db = new Kysely<Schema>({ dialect: new PostgresDialect({ pool }) })
  const counted: number[] = []
  const lane = async () => {
    for (let i = 0; i < 50; i++)
      await db.transaction().execute(async (transaction) => {
        counted.push(await roomsOf(transaction, bench).rolls.nextNumbers('roll', 2026, 1))
      })
  }
  await Promise.all(Array.from({ length: CLIENTS }, lane))
  expect(counting(counted)).toEqual(upTo(CLIENTS * 50))
  await db.destroy()
  await store.close()
})
