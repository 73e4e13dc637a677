import { beforeEach, describe, expect, it } from 'vitest'
import { expectOk } from '../../src/kernel/index.js'
import { costOfRun, getLot, pairOfBaths, rotateBaths, washFromBottle } from '../../src/lab/index.js'
import { schemas } from '../../src/wire/index.js'
import { writerFor } from '../../src/words/index.js'
import { type Bench, benches } from '../support/bench.js'
import { code, DEVELOPER, FIXER, shelfHands } from '../support/shelf-hands.js'

const open = benches()
let bench: Bench
beforeEach(async () => {
  bench = await open(602)
})
const { product, container, bottle, jug, mix, use, test, away, inBottle, move } = shelfHands(() => bench)

/** Seven changes of three minutes, each moved: far past the published least. */
const WASH = { steps: Array.from({ length: 7 }, () => ({ kind: 'change', volume_ml: 500, time_s: 300 })) }
const washAfter = async (fixer_id: string | null) =>
  expectOk(
    await bench.read((rooms) =>
      washFromBottle(bench.context, rooms, schemas.ShelfWash.parse({ fixer_id, wash: WASH }), writerFor('metric')),
    ),
  )

async function fixerIn(name: string, ml = 1000, more: object = {}) {
  const productId = await product({ ...FIXER, name: `Fixer of ${name}`, ...more })
  const id = await bottle(name)
  expectOk(await mix(productId, [[id, ml]]))
  return { id, productId }
}

describe('a wash after the fixer in a bottle', () => {
  it('the same wash is enough after a fresh fixer and has no verdict after a loaded one, and says why', async () => {
    const [fresh, loaded] = [await fixerIn('Fresh'), await fixerIn('Loaded')]
    expectOk(await use(loaded.id, { film: [{ format: '120', count: 21 }], over_count: true }))
    const [after, none] = [await washAfter(fresh.id), await washAfter(loaded.id)]
    expect([after.verdict, after.fixer?.state]).toEqual(['enough', 'usable'])
    expect(none).toMatchObject({
      verdict: 'cannot-be-judged',
      because: 'count-used',
      fixer: { name: 'Loaded', code: '26-002', state: 'finished' },
      residue_g_per_m2: after.residue_g_per_m2,
    })
    expect(none.sentences[0]).toMatch(/loaded fixer cannot be washed safe/)
  })

  it('a clearing test speaks before the count; no bottle and an empty one are not judged', async () => {
    const { id } = await fixerIn('Tested')
    expectOk(await test(id, { of: 'clearing', clears_s: 35, fresh: true }))
    expect((await washAfter(id)).verdict).toBe('enough')
    expectOk(await test(id, { of: 'clearing', clears_s: 70 }))
    expect(await washAfter(id)).toMatchObject({ verdict: 'cannot-be-judged', because: 'clearing-doubled' })
    // Of a fixer whose salt nobody named there is no count: its tests are all that is known.
    const unnamed = await fixerIn('Unnamed', 1000, { fixer: null, rolls_per_litre: null })
    expectOk(await test(unnamed.id, { of: 'clearing', clears_s: 35, fresh: true }))
    expectOk(await test(unnamed.id, { of: 'clearing', clears_s: 70 }))
    expect((await washAfter(unnamed.id)).because).toBe('clearing-doubled')
    expect(await washAfter(null)).toMatchObject({ because: 'fixer-unknown', fixer: null })
    expect((await washAfter(await bottle('Empty'))).because).toBe('fixer-unknown')
  })
})

describe('two fixing baths', () => {
  const asked = (first_id: string, second_id: string) =>
    bench.read((rooms) => pairOfBaths(bench.context, rooms, { first_id, second_id }))

  it('12 rolls of 25 and 40 sheets of 67 come to 1.08 and say rotate', async () => {
    const family = { rolls_per_litre: 25, family_capacity: 0.67 }
    const [first, second] = [await fixerIn('One', 1000, family), await fixerIn('Two', 1000, family)]
    expectOk(await use(first.id, { film: [{ format: '120', count: 12 }] }))
    expect(expectOk(await asked(first.id, second.id))).toMatchObject({
      verdict: 'carry-on',
      used: 0.48,
      left_rolls: 13,
    })
    expectOk(await use(first.id, { film: [{ format: '4x5', count: 40, family: 'tabular' }], over_count: true }))
    const pair = expectOk(await asked(first.id, second.id))
    expect(pair).toMatchObject({ verdict: 'rotate', because: ['count'], left_rolls: 0 })
    expect(pair.used).toBeCloseTo(12 / 25 + 40 / 67, 2)
  })

  it('rotate in one write: first into the jug, second to the front, fresh behind; or nothing at all', async () => {
    const [first, second, fresh] = [await fixerIn('One'), await fixerIn('Two'), await fixerIn('Three')]
    const waste = await jug('Silver')
    const rotate = (jug_id: string, fresh_id: string | null) =>
      bench.write((context, rooms) =>
        rotateBaths(
          context,
          rooms,
          schemas.RotateBaths.parse({ first_id: first.id, second_id: second.id, fresh_id, jug_id }),
        ),
      )
    expect(code(await rotate(waste, await bottle('Empty')))).toBe('shelf.empty')
    expect((await inBottle(first.id))?.held).toBe(1000)
    const done = expectOk(await rotate(waste, fresh.id))
    expect(done.entries.map(({ told }) => told.kind)).toEqual(['discarded', 'stationed', 'stationed'])
    expect((await inBottle(first.id))?.held).toBe(0)
    expect([(await inBottle(second.id))?.station, (await inBottle(fresh.id))?.station]).toEqual(['first', 'second'])
  })

  it('are two, hold fixer, and have a count to go by', async () => {
    const { id } = await fixerIn('One')
    const developer = await bottle('Developer')
    expectOk(await mix(await product(DEVELOPER), [[developer, 500]]))
    const unknown = await bottle('Unknown')
    expectOk(await mix(await product({ name: 'Odd', role: 'fixer', use: 'reusable' }), [[unknown, 500]]))
    expect(code(await asked(id, id))).toBe('shelf.named-twice')
    expect(code(await asked(id, developer))).toBe('shelf.station-of-fixers')
    expect(code(await asked(unknown, id))).toBe('shelf.no-count')
  })
})

describe('what a bath costs', () => {
  const priced = (product_id: string, full: number, minor: number | null, currency = 'EUR') =>
    container({ kind: 'package', product_id, unit: 'ml', full, price: minor === null ? null : { minor, currency } })
  const RUN = '0190d1c2-0000-7000-8000-000000000001'
  const costOf = async (lotId: string) =>
    expectOk(await bench.read((rooms) => getLot(bench.context, rooms, lotId))).cost

  it('a reusable one by its count, a single-use one by what was poured; stock counts in what is made of it', async () => {
    const [fixer, stock] = [await product(FIXER), await product(DEVELOPER)]
    const [concentrate, package_] = [await priced(fixer, 500, 1500), await priced(stock, 1000, 800)]
    const [one, two, three] = [await bottle('A'), await bottle('B'), await bottle('C')]
    const fixing = expectOk(await mix(fixer, [[one, 1000]], [[concentrate, 200]])).lot?.id as string
    expect(await costOf(fixing)).toEqual({ minor: 600, currency: 'EUR', whole: true, per_roll_minor: 30 })
    const kept = expectOk(await mix(stock, [[two, 1000]], [[package_, 500]], null)).lot?.id as string
    const thinned = expectOk(await mix(stock, [[three, 500]], [[two, 250]], [1, 1])).lot?.id as string
    expect([(await costOf(kept))?.minor, (await costOf(thinned))?.minor]).toEqual([400, 100])
    expectOk(await use(three, { back_into: null, poured: 250, film: [{ format: '120', count: 2 }] }))
    expect((await costOf(thinned))?.per_roll_minor).toBe(25)
  })

  it('has no price without one, says where a part had none, and does not add two currencies', async () => {
    const productId = await product(FIXER)
    const [dear, gift, abroad] = [
      await priced(productId, 500, 1000),
      await priced(productId, 500, null),
      await priced(productId, 500, 900, 'CHF'),
    ]
    const mixed = async (from: [string, number][], name: string) =>
      expectOk(await mix(productId, [[await bottle(name), 500]], from)).lot?.id as string
    expect(await costOf(await mixed([[gift, 100]], 'A'))).toBeNull()
    const half = await mixed(
      [
        [dear, 50],
        [gift, 50],
      ],
      'B',
    )
    expect(await costOf(half)).toMatchObject({ minor: 100, whole: false })
    expect(
      await costOf(
        await mixed(
          [
            [dear, 50],
            [abroad, 50],
          ],
          'C',
        ),
      ),
    ).toBeNull()
  })

  it('of a run that is not there is not told', async () => {
    expect(code(await bench.read((rooms) => costOfRun(rooms, RUN)))).toBe('record.not-found')
  })
})

it('a bottle’s age counts where its portion stood before, though only that bottle is looked at', async () => {
  const { id } = await fixerIn('One', 500)
  const other = await bottle('Other')
  bench.clock.advance(20 * 86_400_000)
  const moved = expectOk(await move(id, other, 500))
  const left = moved.containers.find((one) => one.id === other)?.left
  expect(left).toEqual((await inBottle(other))?.left)
  expect(left?.limits.find(({ by }) => by === 'age')?.part).toBeLessThan(1)
  expectOk(await away(other, await jug('Silver')))
})
