import { beforeEach, describe, expect, it } from 'vitest'
import { expectOk, type Result } from '../../src/kernel/index.js'
import {
  addContainer,
  discard,
  finishMix,
  getLot,
  handOver,
  keepProduct,
  lotByCode,
  measureContents,
  movePortion,
  removeContainer,
  shelf,
  startingProducts,
  stationBath,
  takeBack,
  testBath,
  useBath,
} from '../../src/lab/index.js'
import { type Posted, schemas } from '../../src/wire/index.js'
import { type Bench, benches, NOON, problemOf } from '../support/bench.js'

const DAY = 86_400_000
const open = benches()
let bench: Bench
beforeEach(async () => {
  bench = await open(601)
})

const FIXER = {
  name: 'Ammonium fixer',
  role: 'fixer',
  use: 'reusable',
  fixer: { salt: 'ammonium-thiosulfate', alkaline: false },
  rolls_per_litre: 20,
}
const DEVELOPER = { name: 'Borax developer', role: 'developer', use: 'single-use' }

const product = async (said: object) =>
  expectOk(await bench.write((context, rooms) => keepProduct(context, rooms, schemas.ProductStatement.parse(said)))).id
const container = async (statement: object, holds: number | null = null) =>
  expectOk(
    await bench.write((context, rooms) =>
      addContainer(context, rooms, schemas.AddContainer.parse({ statement, holds })),
    ),
  ).id
const bottle = (name: string, holds_ml = 1000) => container({ kind: 'bottle', name, holds_ml })
const jug = (name: string) => container({ kind: 'jug', name, holds_ml: 5000 })
const pack = (product_id: string, full: number, unit = 'ml') => container({ kind: 'package', product_id, unit, full })
const mix = (
  product_id: string,
  into: [string, number][],
  from: [string, number][] = [],
  parts: number[] | null = [1, 4],
) =>
  bench.write((context, rooms) =>
    finishMix(
      context,
      rooms,
      schemas.FinishMix.parse({
        product_id,
        parts,
        into: into.map(([container_id, ml]) => ({ container_id, ml })),
        from: from.map(([container_id, amount]) => ({ container_id, amount })),
      }),
    ),
  )
const use = (container_id: string, more: object = {}) =>
  bench.write((context, rooms) =>
    useBath(
      context,
      rooms,
      schemas.UseBath.parse({ container_id, poured: 500, back_into: container_id, film: [{ format: '120' }], ...more }),
    ),
  )
const move = (from_id: string, into_id: string, amount: number | null, top_up = false) =>
  bench.write((context, rooms) =>
    movePortion(context, rooms, schemas.MovePortion.parse({ from_id, into_id, amount, top_up })),
  )
const away = (container_id: string, jug_id: string | null, more: object = {}) =>
  bench.write((context, rooms) =>
    discard(context, rooms, schemas.Discard.parse({ container_id, jug_id, where: 'jug', ...more })),
  )
const test = (container_id: string, of: object) =>
  bench.write((context, rooms) => testBath(context, rooms, schemas.TestBath.parse({ container_id, test: of })))
const back = (id: string) => bench.write((context, rooms) => takeBack(context, rooms, id, ''))
const look = () => bench.read((rooms) => shelf(bench.context, rooms))
const inBottle = async (id: string) => (await look()).bottles.find((one) => one.id === id)
const code = (done: Result<unknown>) => problemOf(done).code
const standsAfter = (done: Result<Posted>, id: string) => expectOk(done).containers.find((one) => one.id === id)

async function fixer(ml = 600) {
  const productId = await product(FIXER)
  const id = await bottle('Brown 1')
  const posted = expectOk(await mix(productId, [[id, ml]]))
  return { productId, id, lot: posted.lot as NonNullable<Posted['lot']> }
}

describe('a mix', () => {
  it('makes a lot with a code, takes from its packages, and is found by its label', async () => {
    const productId = await product(FIXER)
    const [concentrate, one, two] = [await pack(productId, 500), await bottle('A'), await bottle('B')]
    const posted = expectOk(
      await mix(
        productId,
        [
          [one, 1000],
          [two, 250],
        ],
        [[concentrate, 250]],
      ),
    )
    expect(posted.lot).toMatchObject({ code: '26-001', mixed_ml: 1250, parts: [1, 4], product: 'Ammonium fixer' })
    const { packages, bottles } = await look()
    expect([packages[0]?.held, bottles.map(({ held }) => held)]).toEqual([250, [1000, 250]])
    const found = expectOk(
      await bench.read((rooms) => lotByCode(bench.context, rooms, 'http://192.0.2.7:8080/l/26-001')),
    )
    expect(found.containers.map(({ id }) => id).sort()).toEqual([one, two].sort())
    expect(found.history.map(({ told }) => told.kind)).toEqual(['mixed'])
    expect(code(await bench.read((rooms) => getLot(bench.context, rooms, one)))).toBe('shelf.lot-unknown')
  })

  it('is all or nothing: not enough of a package leaves no lot, no number used', async () => {
    const productId = await product(FIXER)
    const [concentrate, id] = [await pack(productId, 100), await bottle('A')]
    expect(problemOf(await mix(productId, [[id, 1000]], [[concentrate, 200]]))).toMatchObject({
      code: 'shelf.not-enough',
      details: { wanted: 200, held: 100, unit: 'mL' },
    })
    expect((await inBottle(id))?.held).toBe(0)
    expect(expectOk(await mix(productId, [[id, 500]], [[concentrate, 100]])).lot?.code).toBe('26-001')
  })

  it('goes into empty bottles with room, each named once', async () => {
    const { productId, id } = await fixer()
    const small = await bottle('Small', 250)
    expect(code(await mix(productId, [[id, 100]]))).toBe('shelf.not-empty')
    expect(code(await mix(productId, [[small, 251]]))).toBe('shelf.too-full')
    expect(
      code(
        await mix(productId, [
          [small, 100],
          [small, 100],
        ]),
      ),
    ).toBe('shelf.named-twice')
    expect(code(await mix(productId, [[await jug('Jug'), 100]]))).toBe('shelf.not-a-bottle')
  })
})

describe('a use', () => {
  it('of a reusable bath counts its film, loses what is carried out, and ends at what it carries', async () => {
    const { id } = await fixer()
    const mixed = [
      { format: '120', count: 5 },
      { format: '135', count: 3, family: 'tabular' },
    ]
    expect(standsAfter(await use(id, { film: mixed, poured: 300 }), id)).toMatchObject({
      held: 440,
      left: { rolls: 2, whole: { ordinary: 2, tabular: 1 }, met: 8 },
    })
    expect(problemOf(await use(id, { film: [{ format: '120', count: 3 }], poured: 400 }))).toMatchObject({
      code: 'shelf.carries-no-more',
      details: { left: 2, asked: 3 },
    })
    expect(standsAfter(await use(id, { film: [{ format: '120', count: 2 }], poured: 400 }), id)?.left?.state).toBe(
      'finished',
    )
    expect(
      standsAfter(await use(id, { film: [{ format: '120', count: 1 }], poured: 400, over_count: true }), id)?.left?.met,
    ).toBe(11)
  })

  it('names another bottle that could carry it', async () => {
    const { id, productId } = await fixer(100)
    const other = await bottle('Brown 2')
    expectOk(await mix(productId, [[other, 1000]]))
    expect(problemOf(await use(id, { poured: 100, film: [{ format: '120', count: 3 }] })).details['out']).toContain(
      'Brown 2',
    )
  })

  it('of a single-use bath takes what was poured, to the last drop', async () => {
    const productId = await product(DEVELOPER)
    const id = await bottle('Stock')
    expectOk(await mix(productId, [[id, 600]], [], null))
    expect(standsAfter(await use(id, { poured: 300, back_into: null }), id)?.held).toBe(300)
    expect(code(await use(id, { poured: 300 }))).toBe('shelf.used-once')
    const both = await Promise.all([
      use(id, { poured: 300, back_into: null }),
      use(id, { poured: 300, back_into: null }),
    ])
    expect(both.filter(({ ok }) => ok)).toHaveLength(1)
    expect(both.flatMap((one) => (one.ok ? [] : [one.problem.code]))).toEqual(['shelf.empty'])
  })

  it('stops at the wrong bottle: another lot, another role, another bottle to go back into', async () => {
    const { id } = await fixer()
    const empty = await bottle('Empty')
    expect(code(await use(id, { lot_id: empty }))).toBe('shelf.wrong-lot')
    expect(problemOf(await use(id, { for_role: 'developer' }))).toMatchObject({
      code: 'shelf.wrong-role',
      details: { role: 'fixer', wanted: 'developer' },
    })
    expect(code(await use(id, { back_into: empty }))).toBe('shelf.back-into-other')
    expect(code(await use(id, { back_into: null }))).toBe('shelf.back-where')
    expect(code(await use(empty))).toBe('shelf.empty')
    expect(code(await use(id, { poured: 601 }))).toBe('shelf.not-enough')
    expect(code(await use(await jug('Jug')))).toBe('shelf.jug-holds-waste')
  })

  it('is not told of the future, nor before what was booked last', async () => {
    const { id } = await fixer()
    bench.clock.advance(10 * DAY)
    const on = (days: number) => ({ at: new Date(NOON + days * DAY).toISOString() })
    expect(code(await use(id, on(11)))).toBe('shelf.in-future')
    expectOk(await use(id, on(5)))
    expect(code(await use(id, on(4)))).toBe('shelf.before-last')
    expect((await inBottle(id))?.left?.rolls_per_week).toBeCloseTo(0.7, 6)
  })
})

describe('pouring over and topping up', () => {
  it('takes history along; two lots do not meet but by topping up', async () => {
    const { id, productId } = await fixer()
    const [small, other] = [await bottle('Small', 300), await bottle('Other')]
    expectOk(await use(id, { film: [{ format: '120', count: 4 }], lost: 0 }))
    expect(standsAfter(await move(id, small, 300), small)).toMatchObject({ held: 300, left: { met: 2, rolls: 4 } })
    expect((await inBottle(id))?.left).toMatchObject({ met: 2, rolls: 4 })
    expectOk(await mix(productId, [[other, 500]]))
    expect(code(await move(other, id, 100))).toBe('shelf.other-lot')
    expect(standsAfter(await move(other, id, 100, true), id)).toMatchObject({ held: 400, left: { met: 2, rolls: 6 } })
    expect(code(await move(id, id, 1))).toBe('shelf.into-itself')
    expect(standsAfter(await move(small, id, null), id)?.left).toMatchObject({ met: 4, rolls: 10 })
    expect(await inBottle(small)).toMatchObject({ held: 0, lot: null })
  })

  it('replenisher that is due counts what was added', async () => {
    const productId = await product({ ...DEVELOPER, use: 'replenished', replenish_ml_per_roll: 70 })
    const [tank, replenisher] = [await bottle('Tank'), await bottle('Replenisher')]
    expectOk(await mix(productId, [[tank, 900]], [], null))
    expectOk(await mix(productId, [[replenisher, 500]], [], null))
    expect(standsAfter(await use(tank, { film: [{ format: '120', count: 2 }], lost: 40 }), tank)?.left?.due_ml).toBe(
      140,
    )
    expect(standsAfter(await move(replenisher, tank, 100, true), tank)?.left?.due_ml).toBe(40)
  })
})

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
