import { beforeEach, describe, expect, it } from 'vitest'
import { expectOk } from '../../src/kernel/index.js'
import {
  getLot,
  handOver,
  keepProduct,
  measureContents,
  removeContainer,
  startingProducts,
  stationBath,
} from '../../src/lab/index.js'
import { schemas } from '../../src/wire/index.js'
import { type Bench, benches, NOON, problemOf } from '../support/bench.js'
import { code, DEVELOPER, FIXER, shelfHands, standsAfter } from '../support/shelf-hands.js'

const open = benches()
let bench: Bench
beforeEach(async () => {
  bench = await open(601)
})
const { product, bottle, jug, mix, use, away, test, back, look, inBottle, fixer } = shelfHands(() => bench)

describe('tests and stations', () => {
  it('hold a clearing time against that of a fresh bath of the same product', async () => {
    const { id, productId } = await fixer(1000)
    expectOk(await test(id, { of: 'clearing', clears_s: 35, fresh: true }))
    expectOk(await use(id, { film: [{ format: '120', count: 6 }] }))
    expect(standsAfter(await test(id, { of: 'clearing', clears_s: 55 }), id)?.left?.clearing).toEqual({
      fresh_s: 35,
      now_s: 55,
      fix_for_s: 110,
      finished: false,
    })
    const next = await bottle('Next')
    expectOk(await mix(productId, [[next, 1000]]))
    expect(standsAfter(await test(next, { of: 'clearing', clears_s: 70 }), next)?.left?.state).toBe('finished')
    expect(code(await test(id, { of: 'indicator', colour: 'purple' }))).toBe('shelf.test-of-other-role')
  })

  it('say which of two baths a bottle is', async () => {
    const { id } = await fixer()
    const station = (container_id: string) =>
      bench.write((context, rooms) =>
        stationBath(context, rooms, schemas.StationBath.parse({ container_id, station: 'first' })),
      )
    expect(standsAfter(await station(id), id)?.station).toBe('first')
    const developer = await bottle('D')
    expectOk(await mix(await product(DEVELOPER), [[developer, 100]], [], null))
    expect(code(await station(developer))).toBe('shelf.station-of-fixers')
  })
})

describe('waste', () => {
  it('a spent fixer goes into a jug with its silver, and is handed over', async () => {
    const { id } = await fixer()
    const spent = await jug('Spent fixer')
    expectOk(await use(id, { film: [{ format: '120', count: 12 }], lost: 0 }))
    expect(code(await away(id, null, { where: 'as-allowed' }))).toBe('shelf.into-a-jug-only')
    expect(code(await away(id, null))).toBe('shelf.which-jug')
    expectOk(await away(id, spent, { amount: 200 }))
    const [held] = (await look()).jugs
    // 4 of 12 rolls, at 5 g/m² and 0.6 of it: 4 × 0.1548 g.
    expect(held).toMatchObject({
      held_ml: 200,
      silver_rich_ml: 200,
      rolls: 4,
      opened_at: new Date(NOON + 2).toISOString(),
    })
    expect(held?.silver_g.usual).toBeCloseTo(0.619, 3)
    const handed = (ml: number | null) =>
      bench.write((context, rooms) =>
        handOver(context, rooms, schemas.HandOver.parse({ jug_id: spent, ml, to: 'The town' })),
      )
    expectOk(await handed(50))
    expect((await look()).jugs[0]).toMatchObject({ held_ml: 150, rolls: 3 })
    expectOk(await handed(null))
    expect((await look()).jugs[0]).toMatchObject({ held_ml: 0, rolls: 0, opened_at: null })
    expect(code(await handed(null))).toBe('shelf.empty')
  })

  it('never meets what makes gas with it, until the jug was emptied', async () => {
    const { id } = await fixer()
    const spent = await jug('Spent')
    const cleaner = await bottle('Cleaner')
    expectOk(await mix(await product({ name: 'Bleach cleaner', role: 'cleaner', use: 'single-use' }), [[cleaner, 200]]))
    expectOk(await away(id, spent, { amount: 100 }))
    expect(problemOf(await away(cleaner, spent))).toMatchObject({
      code: 'shelf.never-together',
      details: { role: 'fixer' },
    })
    expectOk(
      await bench.write((context, rooms) =>
        handOver(context, rooms, schemas.HandOver.parse({ jug_id: spent, to: 'The town' })),
      ),
    )
    expectOk(await away(cleaner, spent))
    expect(code(await away(id, spent))).toBe('shelf.never-together')
  })
})

describe('corrections', () => {
  it('are entries of their own: what was taken back is as if it never happened', async () => {
    const { id, lot } = await fixer()
    const before = await inBottle(id)
    const wrong = expectOk(await use(id)).entry.id
    expectOk(await back(wrong))
    expect(await inBottle(id)).toEqual(before)
    expect(code(await back(wrong))).toBe('shelf.taken-back-before')
    const { history } = expectOk(await bench.read((rooms) => getLot(bench.context, rooms, lot.id)))
    expect(history.map(({ told, retracted }) => [told.kind, retracted])).toEqual([
      ['mixed', false],
      ['used', true],
      ['taken-back', false],
    ])
    expect(code(await back(history[2]?.id as string))).toBe('shelf.no-taking-back-twice')
  })

  it('of what has gone on since are refused', async () => {
    const productId = await product(DEVELOPER)
    const id = await bottle('Stock')
    const mixed = expectOk(await mix(productId, [[id, 600]], [], null)).entry.id
    expectOk(await use(id, { poured: 300, back_into: null }))
    expect(code(await back(mixed))).toBe('shelf.not-enough')
    expect(code(await bench.write((context, rooms) => removeContainer(context, rooms, id, 1)))).toBe(
      'shelf.goes-when-empty',
    )
  })

  it('by measuring keep both figures, and are refused where somebody booked meanwhile', async () => {
    const { id } = await fixer()
    const measure = (found: number, seen: number) =>
      bench.write((context, rooms) =>
        measureContents(context, rooms, schemas.MeasureContents.parse({ container_id: id, found, seen })),
      )
    expect(standsAfter(await measure(580, 600), id)?.held).toBe(580)
    expect(code(await measure(500, 600))).toBe('shelf.changed-meanwhile')
    expect(standsAfter(await measure(0, 580), id)).toMatchObject({ held: 0, lot: null })
  })
})

describe('generic products', () => {
  it('are all kept as they are, each with where its figures come from', async () => {
    const { products } = startingProducts()
    expect(products.length).toBeGreaterThanOrEqual(14)
    for (const said of products) {
      await product(said)
      expect([said.name, said.source.length > 0]).toEqual([said.name, true])
    }
    expect(products.find(({ name }) => name === 'Plain hypo fixer')).toMatchObject({
      origin: 'memory',
      fixer: { salt: 'sodium-thiosulfate' },
    })
    expect(products.filter((said) => said.floor_ml_per_roll !== null || said.rolls_per_litre !== null)).toEqual([])
  })

  it.each([
    ['a fixing salt in a stop', { ...FIXER, role: 'stop' }, 'product.not-of-this-role'],
    [
      'a stop’s acid in a developer',
      { ...DEVELOPER, stop: { acid: 'acetic', percent: 1 } },
      'product.not-of-this-role',
    ],
    ['replenisher of a bath used once', { ...DEVELOPER, replenish_ml_per_roll: 70 }, 'product.replenished-only'],
    [
      'a salt that nobody knows',
      { ...DEVELOPER, formula: { additions: [{ salt: 'dust' }], water_first: 0.8, from_c: 20, to_c: 40 } },
      'formula.salt-unknown',
    ],
  ])('refuse %s', async (_, said, wanted) => {
    const asked = bench.write((context, rooms) => keepProduct(context, rooms, schemas.ProductStatement.parse(said)))
    expect(code(await asked)).toBe(wanted)
  })
})
