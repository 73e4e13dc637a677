// How long the shelf takes to open: empty, with five lots, and with five thousand behind it.
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { performance } from 'node:perf_hooks'
import { fileURLToPath, pathToFileURL } from 'node:url'

const root = dirname(dirname(fileURLToPath(import.meta.url)))
const built = (name) => import(pathToFileURL(join(root, 'dist', name, 'index.js')).href)
const parts = async () => ({
  ...(await import(pathToFileURL(join(root, 'dist', 'server', 'app.js')).href)),
  ...(await import(pathToFileURL(join(root, 'dist', 'server', 'house.js')).href)),
})

/** Milliseconds of something done once. */
async function took_ms(work) {
  const from = performance.now()
  await work()
  return performance.now() - from
}

const BOTTLES = 60
/** Lots that are mixed in one write, so that the bench is there before the measuring is forgotten. */
const AT_ONCE = 250

let bench

/** A bench with so many lots of all times; the last of them stand in its bottles, used and tested. */
async function openBench(lots) {
  const folder = mkdtempSync(join(tmpdir(), 'wetside-shelf-'))
  const { createApp, settle } = await parts()
  const { idsFrom, SetClock, SeededRandom, expectOk, ok } = await built('kernel')
  const { openStore } = await built('store')
  const lab = await built('lab')
  const { schemas } = await built('wire')
  const clock = new SetClock(Date.UTC(2026, 9, 1))
  const ids = idsFrom(clock, new SeededRandom(1))
  const file = join(folder, 'wetside.db')
  const store = expectOk(await openStore({ kind: 'sqlite', file }, { clock, ids }))
  const homeBench = await settle(store, clock, ids, 'UTC')
  const context = { actor: { role: 'owner', id: 'owner' }, bench: homeBench, clock, ids }
  const write = async (work) => expectOk(await store.write(context, null, work))
  const fixer = { salt: 'ammonium-thiosulfate', alkaline: false }
  const said = schemas.ProductStatement.parse({ name: 'Fixer', role: 'fixer', use: 'reusable', fixer })
  const product = await write((rooms) => lab.keepProduct(context, rooms, said))
  const bottles = []
  for (let i = 0; i < Math.min(BOTTLES, lots); i++) {
    const statement = { kind: 'bottle', name: `Brown ${i + 1}`, holds_ml: 1000 }
    const asked = schemas.AddContainer.parse({ statement })
    bottles.push((await write((rooms) => lab.addContainer(context, rooms, asked))).id)
  }
  const life = async (rooms, lot) => {
    const container_id = bottles[lot % bottles.length]
    clock.advance(3_600_000)
    const given = schemas.Discard.parse({ container_id, where: 'given-away' })
    if (lot >= bottles.length) expectOk(await lab.discard(context, rooms, given))
    const mixed = schemas.FinishMix.parse({ product_id: product.id, into: [{ container_id, ml: 1000 }] })
    expectOk(await lab.finishMix(context, rooms, mixed))
    // Of what is emptied before the shelf is opened, nothing else matters.
    if (lot < lots - bottles.length) return
    const film = [{ format: '120', count: 2 }]
    const used = schemas.UseBath.parse({ container_id, film, poured: 500, back_into: container_id })
    expectOk(await lab.useBath(context, rooms, used))
  }
  for (let first = 0; first < lots; first += AT_ONCE)
    await write(async (rooms) => {
      for (let lot = first; lot < Math.min(lots, first + AT_ONCE); lot++) await life(rooms, lot)
      return ok(null)
    })
  const config = {
    host: '127.0.0.1',
    port: 0,
    database: { kind: 'sqlite', file },
    loopbackIsOwner: true,
    extraHosts: [],
  }
  const app = await createApp({ store, clock, ids, config, homeBench, webFolder: null, address: () => '' })
  const address = await app.listen({ host: '127.0.0.1', port: 0 })
  return { folder, app, store, file, address, stand: bottles.length }
}

async function closeBench() {
  await bench.app.close()
  await bench.store.close()
  rmSync(bench.folder, { recursive: true, force: true })
}

async function openShelf() {
  const { bottles } = await (await fetch(`${bench.address}/api/shelf`)).json()
  if (bottles.filter(({ held }) => held > 0).length !== bench.stand) throw new Error('the shelf is not all there')
}

async function openLots() {
  const headers = { 'content-type': 'application/json' }
  const answer = await fetch(`${bench.address}/api/lots/find`, { method: 'POST', headers, body: '{"words":"fixer"}' })
  const { lots } = await answer.json()
  if (lots.length !== 50) throw new Error(`${lots.length} lots were listed`)
}

const shelfOf = (lots, name) => ({
  name: `the shelf opens ${name}`,
  bound: { value: 150, unit: 'ms' },
  setUp: async () => {
    bench = await openBench(lots)
  },
  run: () => took_ms(openShelf),
  repeats: 30,
  tearDown: closeBench,
})

export const rows = [
  shelfOf(0, 'empty'),
  shelfOf(5, 'with five lots'),
  shelfOf(5000, 'with five thousand lots behind sixty bottles'),
  {
    ...shelfOf(5000, ''),
    name: 'fifty of five thousand lots by a word',
    run: () => took_ms(openLots),
  },
]
