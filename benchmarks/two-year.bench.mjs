// What a bench with two years of history costs: its list of times over HTTP, and the reckoning of times and doses.
import { copyFileSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { performance } from 'node:perf_hooks'
import { fileURLToPath, pathToFileURL } from 'node:url'
import Database from 'better-sqlite3'
import { writeTwoYears } from '../scripts/two-year.mjs'

const root = dirname(dirname(fileURLToPath(import.meta.url)))
const built = (name) => import(pathToFileURL(join(root, 'dist', name, 'index.js')).href)

/** Milliseconds of something done once. */
async function took_ms(work) {
  const from = performance.now()
  await work()
  return performance.now() - from
}

let bench

/** The generated bench behind a listening server, and a copy of its file opened bare beside it. */
async function openBench() {
  const folder = mkdtempSync(join(tmpdir(), 'wetside-two-year-'))
  await writeTwoYears(folder)
  const { createApp, settle } = await serverParts()
  const { idsFrom, SetClock, SeededRandom, expectOk } = await built('kernel')
  const { openStore } = await built('store')
  const clock = new SetClock(Date.UTC(2026, 9, 1))
  const ids = idsFrom(clock, new SeededRandom(1))
  const file = join(folder, 'wetside.db')
  // The store holds its file for itself, so the bare program reads a copy.
  const copy = join(folder, 'copy.db')
  copyFileSync(file, copy)
  const store = expectOk(await openStore({ kind: 'sqlite', file }, { clock, ids }))
  const config = {
    host: '127.0.0.1',
    port: 0,
    database: { kind: 'sqlite', file },
    loopbackIsOwner: true,
    extraHosts: [],
  }
  const homeBench = await settle(store, clock, ids, 'UTC')
  const app = await createApp({ store, clock, ids, config, homeBench, webFolder: null, address: () => '' })
  const address = await app.listen({ host: '127.0.0.1', port: 0 })
  const bare = new Database(copy, { readonly: true })
  return { folder, app, store, bare, times: `${address}/api/times` }
}

const serverParts = async () => ({
  ...(await import(pathToFileURL(join(root, 'dist', 'server', 'app.js')).href)),
  ...(await import(pathToFileURL(join(root, 'dist', 'server', 'house.js')).href)),
})

async function closeBench() {
  bench.bare.close()
  await bench.app.close()
  await bench.store.close()
  rmSync(bench.folder, { recursive: true, force: true })
}

async function listTimes() {
  const answer = await fetch(bench.times)
  const { times } = await answer.json()
  if (times.length < 150) throw new Error(`${times.length} times were listed`)
}

/** The same rows without rooms, schemas or HTTP. */
const selectTimes = () => {
  bench.bare.prepare('SELECT * FROM reference_time_revisions').all()
  bench.bare.prepare('SELECT * FROM reference_time_points').all()
}

const MANY = 1000
let science
let basis
/** Twenty readings over ten minutes in a bath that cools and is warmed again. */
const readings = Array.from({ length: 20 }, (_, i) => ({ at: i * 30, temperature: 20.5 + Math.sin(i / 3) }))

async function openScience() {
  science = await built('science')
  const { expectOk } = await built('kernel')
  const points = [
    { temperature: 18, time: 690 },
    { temperature: 20, time: 570 },
    { temperature: 22, time: 480 },
    { temperature: 24, time: 405 },
  ]
  basis = expectOk(science.defineBasis({ kind: 'ordinary', points }))
}

/** A sum that is asked for, so that nothing can be left out. */
function many(one) {
  let sum = 0
  const from = performance.now()
  for (let i = 0; i < MANY; i++) sum += one(i)
  const took = performance.now() - from
  if (!Number.isFinite(sum) || sum <= 0) throw new Error(`the sum came out as ${sum}`)
  return took
}

const slope = Math.log(2.4) / 10
const bareRate = (temperature) => Math.exp(slope * (temperature - 20))
const bareDose = () => readings.reduce((sum, { temperature }) => sum + 30 * bareRate(temperature), 0)

export const rows = [
  {
    name: 'the list of times of the two-year bench, over HTTP',
    bound: { value: 100, unit: 'ms' },
    setUp: async () => {
      bench = await openBench()
    },
    run: () => took_ms(listTimes),
    baseline: { name: 'two bare SELECTs', run: () => took_ms(selectTimes) },
    repeats: 40,
    tearDown: closeBench,
  },
  {
    name: 'a thousand doses of twenty readings',
    bound: { value: 50, unit: 'ms' },
    setUp: openScience,
    run: () => many(() => science.dose(basis, readings).value.equivalent),
    baseline: { name: 'a loop summing exp', run: () => many(bareDose) },
    repeats: 40,
  },
  {
    name: 'a thousand answers to “how long at this temperature”',
    bound: { value: 50, unit: 'ms' },
    setUp: openScience,
    run: () => many((i) => science.developingTime(basis, 16 + (i % 100) / 10).value.time),
    baseline: { name: 'a loop of exp', run: () => many((i) => 570 / bareRate(16 + (i % 100) / 10)) },
    repeats: 40,
  },
]
