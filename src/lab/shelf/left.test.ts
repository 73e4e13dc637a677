import { describe, expect, it } from 'vitest'
import { expectOk } from '../../kernel/index.js'
import { type MetFilm, type ProductStatement, schemas } from '../../wire/index.js'
import { filmTakes, toMillionths } from './amounts.js'
import { type Contents, EMPTY } from './ledger.js'
import { leftIn } from './left.js'
import type { Bath } from './limits.js'

const DAY = 86_400_000
const NOW = 400 * DAY
const film = (format: string, count: number, family = 'ordinary') => schemas.MetFilm.parse({ format, count, family })
const product = (changes: object): ProductStatement =>
  schemas.ProductStatement.parse({ name: 'A bath', role: 'fixer', use: 'reusable', ...changes })
const fixer = (salt: string, changes: object = {}) => product({ fixer: { salt, alkaline: false }, ...changes })

/** A bath of so many millilitres that met some film since it was mixed. */
function bath(of: ProductStatement, ml: number, met: MetFilm[] = [], changes: Partial<Contents> = {}): Bath {
  const takes = expectOk(filmTakes(met, of.family_capacity))
  const contents = { ...EMPTY, held: ml * 1000, basis: ml * 1000, lotId: 'lot', since: NOW - 10 * DAY, ...takes }
  const fresh = { ordinary: null, tabular: null, 'high-iodide': null }
  return { contents: { ...contents, ...changes }, product: of, parts: [1, 4], fresh }
}
const rollsBy = (one: Bath) => Object.fromEntries(leftIn(one, NOW).limits.map(({ by, rolls }) => [by, rolls]))

describe('what is left by count and silver', () => {
  it('5 ordinary rolls and 3 of a family at 0.6 in a 12-unit bath leave 2 or 1', () => {
    const twelve = bath(fixer('ammonium-thiosulfate', { rolls_per_litre: 20 }), 600, [
      film('120', 5),
      film('135', 3, 'tabular'),
    ])
    expect(leftIn(twelve, NOW)).toMatchObject({
      rolls: 2,
      whole: { ordinary: 2, tabular: 1 },
      met: 8,
      decides: 'count',
    })
  })

  it('a family’s own figure on a label replaces the assumed one', () => {
    const own = fixer('ammonium-thiosulfate', { rolls_per_litre: 20, family_capacity: 0.5 })
    expect(leftIn(bath(own, 600, [film('120', 5), film('135', 3, 'tabular')]), NOW).rolls).toBe(1)
  })

  it('counts mixed formats: 1 × 135, 2 × 120, 12 × 4×5, 4 × 8×10, 5 × 11×14 are 19.625', () => {
    const list = [film('135', 1), film('120', 2), film('4x5', 12), film('8x10', 4), film('11x14', 5)]
    expect(expectOk(filmTakes(list, null))).toEqual({ met: 19_625_000, worked: 19_625_000 })
  })

  it('of an ammonium fixer the count decides after 20 rolls, of a sodium fixer silver after 12.9', () => {
    const met = [film('120', 20)]
    const ammonium = leftIn(bath(fixer('ammonium-thiosulfate'), 1000, met), NOW)
    expect(ammonium).toMatchObject({ decides: 'count', rolls: 0, state: 'finished' })
    expect(ammonium.silver_g_per_l?.usual).toBeCloseTo(3.1, 2)
    const fresh = rollsBy(bath(fixer('sodium-thiosulfate'), 1000))
    expect([fresh['count'], fresh['silver']]).toEqual([20, expect.closeTo(12.9, 1)])
    expect(leftIn(bath(fixer('sodium-thiosulfate'), 1000), NOW).decides).toBe('silver')
  })

  it('is finished at exactly what it carries, and not a millionth before', () => {
    const of = fixer('ammonium-thiosulfate', { rolls_per_litre: 10 })
    const worked = (rolls: number) => ({ worked: toMillionths(rolls), met: toMillionths(rolls) })
    expect(leftIn(bath(of, 1000, [], worked(10)), NOW).state).toBe('finished')
    expect(leftIn(bath(of, 1000, [], worked(9.999_999)), NOW).state).toBe('usable')
  })
})

describe('clearing tests of a bath', () => {
  const tested = (now: number, family: 'ordinary' | 'tabular', atMost = 6) => {
    const test = { of: 'clearing', clears_s: now, family, fresh: false } as const
    const some = bath(fixer('ammonium-thiosulfate'), 1000, [film('120', atMost)], {
      tests: [{ entryId: 'x', at: NOW, met: toMillionths(atMost) / 1e6, test }],
    })
    return leftIn({ ...some, fresh: { ordinary: 35, tabular: 35, 'high-iodide': null } }, NOW)
  }

  it('35 s fresh and 55 s now: fix 1:50, or 2:45 of a slow family; to the jug at 1:10', () => {
    expect(tested(55, 'ordinary').clearing).toEqual({ fresh_s: 35, now_s: 55, fix_for_s: 110, finished: false })
    expect(tested(55, 'tabular').clearing?.fix_for_s).toBe(165)
    expect(tested(70, 'ordinary').clearing?.finished).toBe(true)
    expect(tested(70, 'ordinary').state).toBe('finished')
    expect(tested(69, 'ordinary').clearing?.finished).toBe(false)
  })

  it('say how many rolls are left by their trend', () => {
    const { limits } = tested(55, 'ordinary')
    // 20 s in 6 rolls, so 35 s in 10.5: 4.5 are left.
    expect(limits.find(({ by }) => by === 'tests')?.rolls).toBeCloseTo(4.5, 6)
  })
})

describe('age, acid and volume', () => {
  it('adds up fractions over how it stood: 91 days full and 30.5 with air over it are a whole life', () => {
    const stock = product({ role: 'developer', use: 'single-use' })
    const stretches = [
      { state: 'full' as const, from: NOW - 121.5 * DAY, to: NOW - 30.5 * DAY },
      { state: 'half-full' as const, from: NOW - 30.5 * DAY, to: null },
    ]
    const old: Bath = { ...bath(stock, 1000, [], { stretches }), parts: null }
    expect(leftIn(old, NOW)).toMatchObject({ decides: 'age', days: 0, state: 'finished' })
    const younger = leftIn(old, NOW - 6.1 * DAY)
    expect([younger.state, younger.days]).toEqual(['usable', expect.closeTo(6.1, 6)])
  })

  it('says nothing of age where nothing is known of a state', () => {
    const stretches = [{ state: 'tank' as const, from: NOW - DAY, to: null }]
    const working = bath(product({ role: 'developer', use: 'reusable' }), 1000, [], { stretches })
    expect(leftIn(working, NOW)).toMatchObject({ limits: [], decides: null, state: 'unknown' })
  })

  it('a published count of a stop bath and its acid both stand; the lower decides', () => {
    const stop = product({ role: 'stop', stop: { acid: 'acetic', percent: 1 }, rolls_per_litre: 12 })
    const limits = rollsBy(bath(stop, 1000, [film('120', 5)]))
    expect(limits).toEqual({ count: 7, acid: expect.closeTo(19.5, 1) })
  })

  it('a stock with a floor and nothing poured yet counts by its floor', () => {
    const stock = product({ role: 'developer', use: 'single-use', floor_ml_per_roll: 6 })
    expect(rollsBy({ ...bath(stock, 250), parts: null })).toEqual({ volume: 41 })
  })

  it('lengthens the next time, and asks for replenisher, as the product says', () => {
    const met = [film('120', 3)]
    expect(
      leftIn(bath(product({ role: 'developer', longer_percent_per_roll: 10 }), 1000, met), NOW).next_time_factor,
    ).toBeCloseTo(1.3)
    const seasoned = product({ role: 'developer', use: 'replenished', replenish_ml_per_roll: 70 })
    expect(
      leftIn(
        bath(seasoned, 1000, met, {
          added: 100_000,
          uses: [{ entryId: 'one', at: NOW, rolls: 3, pouredMl: 500, lostMl: 60 }],
        }),
        NOW,
      ).due_ml,
    ).toBe(110)
  })
})

describe('the pace', () => {
  const use = (at: number, rolls: number) => ({ entryId: `${at}`, at, rolls, pouredMl: 500, lostMl: 0 })
  it('turns rolls into a date, and the earlier end decides', () => {
    const of = fixer('ammonium-thiosulfate', { keeps: { full: 30 } })
    const stretches = [{ state: 'full' as const, from: NOW - 10 * DAY, to: null }]
    const uses = [use(NOW - 8 * DAY, 4), use(NOW - DAY, 6)]
    const slow = leftIn(bath(of, 1000, [film('120', 10)], { stretches, uses }), NOW)
    // 10 rolls in 10 days, so the 10 that are left end in 10; its age would end it in 20.
    expect(slow).toMatchObject({ decides: 'count', rolls_per_week: 7, ends: new Date(NOW + 10 * DAY).toISOString() })
    const old = leftIn(bath(of, 2000, [film('120', 10)], { stretches, uses }), NOW)
    expect(old).toMatchObject({ decides: 'age', ends: new Date(NOW + 20 * DAY).toISOString() })
  })

  it('is unknown before the first use: then the smaller part decides', () => {
    const of = fixer('ammonium-thiosulfate', { keeps: { full: 30 } })
    const stretches = [{ state: 'full' as const, from: NOW - 10 * DAY, to: null }]
    expect(leftIn(bath(of, 1000, [], { stretches }), NOW)).toMatchObject({ decides: 'age', rolls_per_week: null })
  })
})
