// What a hundred thousand rolls cost: the search and the data of the pages over HTTP, beside bare queries of the same.
import { copyFileSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { performance } from 'node:perf_hooks'
import { fileURLToPath, pathToFileURL } from 'node:url'
import Database from 'better-sqlite3'

const root = dirname(dirname(fileURLToPath(import.meta.url)))
const built = (path) => import(pathToFileURL(join(root, 'dist', path)).href)

const ROLLS = 100_000
const PER_WRITE = 500
const FILMS = ['Corvane 400', 'Tarn 100', 'Fell 25', 'Panchromatic 200', 'Ortho 50']
const PEOPLE = [null, 'Ida', 'Jon', 'Mara', 'Olu']

/** Milliseconds of something done once. */
async function took_ms(work) {
  const from = performance.now()
  await work()
  return performance.now() - from
}

let bench

async function openBench() {
  const folder = mkdtempSync(join(tmpdir(), 'wetside-rolls-'))
  const { expectOk, idsFrom, SetClock, SeededRandom } = await built('kernel/index.js')
  const { openStore } = await built('store/index.js')
  const { takeInRolls } = await built('lab/index.js')
  const { createApp } = await built('server/app.js')
  const { settle } = await built('server/house.js')
  const { schemas } = await built('wire/index.js')
  const clock = new SetClock(Date.UTC(2026, 9, 1))
  const ids = idsFrom(clock, new SeededRandom(1))
  const file = join(folder, 'wetside.db')
  const database = { kind: 'sqlite', file }
  const store = expectOk(await openStore(database, { clock, ids }))
  const homeBench = await settle(store, clock, ids, 'UTC')
  const context = { actor: { role: 'owner', id: 'owner' }, bench: homeBench, clock, ids }
  for (let from = 0; from < ROLLS; from += PER_WRITE) {
    const rolls = Array.from({ length: PER_WRITE }, (_, i) => ({ statement: statement(from + i) }))
    const asked = schemas.TakeInRolls.parse({ rolls })
    expectOk(await store.write(context, null, (rooms) => takeInRolls(context, rooms, asked)))
  }
  // The store holds its file for itself, so the bare program reads a copy.
  const copy = join(folder, 'copy.db')
  for (const ending of ['', '-wal']) copyFileSync(file + ending, copy + ending)
  const config = { host: '127.0.0.1', port: 0, database, loopbackIsOwner: true, extraHosts: [] }
  const house = { store, clock, ids, config, homeBench, webFolder: null, wrongCodes: [], feeds: new Set(), port: 0 }
  const app = await createApp({ ...house, address: () => '' })
  const address = await app.listen({ host: '127.0.0.1', port: 0 })
  const bare = new Database(copy)
  return { folder, app, store, bare, address }
}

const statement = (n) => ({
  film: FILMS[n % FILMS.length],
  process: 'black-and-white',
  format: '135',
  whose: PEOPLE[n % PEOPLE.length],
  note: `canister ${(n * 7919) % ROLLS}`,
})

async function closeBench() {
  bench.bare.close()
  await bench.app.close()
  await bench.store.close()
  rmSync(bench.folder, { recursive: true, force: true })
}

const setUp = async () => {
  bench ??= await openBench()
}

async function post(path, body) {
  const headers = { 'content-type': 'application/json' }
  const answer = await fetch(bench.address + path, { method: 'POST', headers, body: JSON.stringify(body) })
  return answer.json()
}

async function find(look, least) {
  const { found } = await post('/api/rolls/find', { look, most: 50 })
  if (found < least) throw new Error(`${found} rolls were found`)
}

/** The same page and the same count, without rooms, schemas or HTTP. */
function bareFind(where, ...values) {
  bench.bare.prepare(`SELECT count(*) FROM rolls WHERE ${where}`).get(...values)
  bench.bare.prepare(`SELECT * FROM rolls WHERE ${where} ORDER BY year DESC, n DESC LIMIT 50`).all(...values)
}

const row = (name, run, baseline) => ({
  name: `${ROLLS} rolls: ${name}`,
  bound: { value: 200, unit: 'ms' },
  setUp,
  run: () => took_ms(run),
  baseline: { name: 'the bare queries', run: () => took_ms(baseline) },
  repeats: 20,
})

export const rows = [
  row(
    'the first page',
    () => find({}, ROLLS),
    () => bareFind('1 = 1'),
  ),
  row(
    'a search of two words',
    () => find({ words: 'tarn 7919' }, 1),
    () => bareFind('searched LIKE ? AND searched LIKE ?', '%tarn%', '%7919%'),
  ),
  row(
    'of one person and film',
    () => find({ whose: 'Ida', film: 'Tarn 100' }, 1),
    () => bareFind('whose_key = ? AND film_key = ?', 'ida', 'tarn 100'),
  ),
  {
    ...row(
      'one by the number on its sticker',
      async () => {
        const answer = await fetch(`${bench.address}/api/rolls/by-number?number=2026-50000`)
        if (!answer.ok) throw new Error(`the roll was not found: ${answer.status}`)
      },
      () => bench.bare.prepare('SELECT * FROM rolls WHERE number = ?').get('2026-50000'),
    ),
    tearDown: closeBench,
  },
]
