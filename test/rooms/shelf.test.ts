import { beforeEach, describe, expect, it } from 'vitest'
import { expectOk } from '../../src/kernel/index.js'
import { getLot, lotByCode } from '../../src/lab/index.js'
import { type Bench, benches, NOON, problemOf } from '../support/bench.js'
import { code, DEVELOPER, FIXER, shelfHands, standsAfter } from '../support/shelf-hands.js'

const DAY = 86_400_000
const open = benches()
let bench: Bench
beforeEach(async () => {
  bench = await open(601)
})
const { product, bottle, jug, pack, mix, use, move, look, inBottle, fixer } = shelfHands(() => bench)

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
