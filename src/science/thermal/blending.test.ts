import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  type Celsius,
  celsius,
  expectOk,
  type Grams,
  grams,
  type Millilitres,
  millilitres,
} from '../../kernel/index.js'
import { blended, fromTheTaps, heatBalance, iceFor, pourAt, SIMPLE_RULE, waterAt, worthInWater } from './index.js'

const worth = (water: number, temperature: number) => ({ water: grams(water), temperature: celsius(temperature) })
const runs = { seed: 20_261, numRuns: 300 }
const between = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true })
const warmth = fc.record({ water: between(1, 2000), temperature: between(0, 90) }) as fc.Arbitrary<
  ReturnType<typeof worth>
>
const code = (result: { ok: boolean; problem?: { code: string } }) => (result.ok ? null : result.problem?.code)

describe('waters that come together', () => {
  it('stand at the mean by mass', () => {
    expect(expectOk(blended([worth(300, 10), worth(100, 50)]))).toBeCloseTo(20, 10)
    expect(expectOk(blended([worth(0, 90), worth(5, 12)]))).toBeCloseTo(12, 10)
  })

  it('stand between the coldest and the warmest, whatever their order and however they are split', () => {
    fc.assert(
      fc.property(fc.array(warmth, { minLength: 1, maxLength: 6 }), (parts) => {
        const together = expectOk(blended(parts))
        const temperatures = parts.map(({ temperature }) => temperature)
        expect(together).toBeGreaterThanOrEqual(Math.min(...temperatures) - 1e-9)
        expect(together).toBeLessThanOrEqual(Math.max(...temperatures) + 1e-9)
        const halves = [...parts].reverse().flatMap((part) => {
          const half = { ...part, water: (part.water / 2) as Grams }
          return [half, half]
        })
        expect(expectOk(blended(halves))).toBeCloseTo(together, 8)
      }),
      runs,
    )
  })

  it('are refused when there is nothing, or what is no water', () => {
    expect(code(blended([worth(0, 20)]))).toBe('thermal.nothing-to-mix')
    expect(code(blended([]))).toBe('thermal.bad-value')
    expect(code(blended(Array.from({ length: 13 }, () => worth(1, 20))))).toBe('thermal.bad-value')
    expect(blended([worth(1, 20), { water: grams(1), temperature: 101 as Celsius }])).toMatchObject({
      problem: { code: 'quantity.out-of-range', field: 'parts[1].temperature' },
    })
    expect(code(blended([{ water: Number.NaN as Grams, temperature: celsius(20) }]))).toBe('thermal.bad-value')
  })
})

describe('hot and cold from the taps', () => {
  const taps = (wanted: number, vessel?: ReturnType<typeof worth>) =>
    fromTheTaps({
      volume: millilitres(800),
      wanted: celsius(wanted),
      hot: celsius(50),
      cold: celsius(10),
      ...(vessel === undefined ? {} : { vessel }),
    })

  it('a quarter of the way up takes a quarter of hot', () => {
    expect(expectOk(taps(20))).toMatchObject({
      hot: expect.closeTo(200, 9),
      cold: expect.closeTo(600, 9),
      forVessel: 0,
    })
  })

  it('all of one tap when it is as warm as is wanted', () => {
    expect(expectOk(taps(50))).toMatchObject({ hot: 800, cold: 0 })
    expect(expectOk(taps(10))).toMatchObject({ hot: 0, cold: 800 })
  })

  it('stand at the wanted temperature with the vessel, by the balance forwards', () => {
    fc.assert(
      fc.property(between(16, 40), between(0, 120), between(12, 30), (wanted, water, temperature) => {
        const vessel = worth(water, temperature)
        const { hot, cold, forVessel } = expectOk(taps(wanted, vessel))
        expect(hot + cold).toBeCloseTo(800, 8)
        expect(expectOk(blended([worth(hot, 50), worth(cold, 10), vessel]))).toBeCloseTo(wanted, 8)
        expect(hot - forVessel).toBeCloseTo(expectOk(taps(wanted)).hot, 8)
      }),
      runs,
    )
  })

  it('more hot for a warmer wish, and the same in any unit of volume', () => {
    fc.assert(
      fc.property(between(10, 49), between(0.1, 1), between(1, 90), (wanted, more, times) => {
        const asked = { wanted: celsius(wanted), hot: celsius(50), cold: celsius(10), volume: millilitres(100) }
        const { hot } = expectOk(fromTheTaps(asked))
        expect(expectOk(fromTheTaps({ ...asked, wanted: celsius(wanted + more) })).hot).toBeGreaterThan(hot)
        const large = expectOk(fromTheTaps({ ...asked, volume: millilitres(100 * times) }))
        expect(large.hot).toBeCloseTo(hot * times, 6)
      }),
      runs,
    )
  })

  it('out of reach is refused with what can be had, counting the vessel', () => {
    expect(taps(9.9)).toMatchObject({ problem: { code: 'thermal.colder-than-taps', field: 'wanted' } })
    expect(taps(50.1)).toMatchObject({ problem: { code: 'thermal.warmer-than-taps' } })
    const refused = taps(49, worth(200, 20))
    expect(refused).toMatchObject({
      problem: {
        code: 'thermal.warmer-than-taps',
        details: { warmest: { celsius: (800 * 50 + 200 * 20) / 1000 }, coolest: { celsius: (800 * 10 + 4000) / 1000 } },
      },
    })
    expect(taps(11, worth(200, 20)).ok).toBe(false)
    expect(taps(11.9, worth(200, 20))).toMatchObject({ problem: { code: 'thermal.colder-than-taps' } })
  })

  it('a hot tap that is not hotter, and values that are no water, are refused', () => {
    const asked = { volume: millilitres(500), wanted: celsius(20), hot: celsius(20), cold: celsius(20) }
    expect(code(fromTheTaps(asked))).toBe('thermal.hot-not-hotter')
    expect(code(fromTheTaps({ ...asked, hot: celsius(20.09) }))).toBe('thermal.hot-not-hotter')
    expect(fromTheTaps({ ...asked, hot: celsius(20.2) }).ok).toBe(true)
    expect(fromTheTaps({ ...asked, hot: celsius(120) })).toMatchObject({ problem: { field: 'hot' } })
    expect(fromTheTaps({ ...asked, cold: celsius(-1) })).toMatchObject({ problem: { field: 'cold' } })
    expect(fromTheTaps({ ...asked, volume: 0.5 as Millilitres })).toMatchObject({ problem: { field: 'volume' } })
  })
})

describe('water', () => {
  it('is densest at four degrees and grows lighter either way', () => {
    const density = (temperature: number) => expectOk(waterAt(celsius(temperature))).density
    for (const other of [0, 2, 6, 20, 60, 99.9]) expect(density(4)).toBeGreaterThan(density(other))
    for (let t = 5; t < 99; t++) expect(density(t)).toBeGreaterThan(density(t + 1))
  })

  it('has the enthalpy that its heat capacity adds up to', () => {
    for (const low of [5, 20, 45, 80]) {
      const [a, middle, b] = [low, low + 0.5, low + 1].map((t) => expectOk(waterAt(celsius(t))))
      expect((b?.enthalpy ?? 0) - (a?.enthalpy ?? 0)).toBeCloseTo(middle?.heatCapacity ?? 0, 4)
    }
  })

  it('is refused as ice and as steam', () => {
    for (const wrong of [-0.1, 100, Number.NaN]) expect(code(waterAt(wrong as Celsius))).toBe('quantity.out-of-range')
  })
})

describe('the whole balance of heat', () => {
  const poured = (volume: number, temperature: number) => ({
    volume: millilitres(volume),
    temperature: celsius(temperature),
  })

  it('keeps the mass and the heat of what was poured', () => {
    const state = (temperature: number) => expectOk(waterAt(celsius(temperature)))
    fc.assert(
      fc.property(between(1, 900), between(0.5, 30), between(1, 900), between(30, 90), (v, cold, w, hot) => {
        const found = expectOk(heatBalance([poured(v, cold), poured(w, hot)]))
        const [a, b, together] = [state(cold), state(hot), state(found.temperature)]
        const [first, second] = [v * a.density, w * b.density]
        expect(found.volume * together.density).toBeCloseTo(first + second, 6)
        expect(together.enthalpy * (first + second)).toBeCloseTo(first * a.enthalpy + second * b.enthalpy, 2)
      }),
      runs,
    )
  })

  const off = (cold: number, hot: number, wanted: number) =>
    expectOk(
      fromTheTaps({ volume: millilitres(1000), wanted: celsius(wanted), hot: celsius(hot), cold: celsius(cold) }),
    ).off

  it('agrees with the simple rule within its stated error for ordinary taps and baths of 18 to 24 degrees', () => {
    fc.assert(
      fc.property(between(10, 17), between(30, 50), between(18, 24), (cold, hot, wanted) => {
        expect(Math.abs(off(cold, hot, wanted))).toBeLessThanOrEqual(SIMPLE_RULE.error)
      }),
      runs,
    )
  })

  it('shows where the simple rule is worse than stated: very cold with very hot water', () => {
    expect(off(8, 58, 24)).toBeGreaterThan(SIMPLE_RULE.error)
    expect(off(5, 60, 32)).toBeGreaterThan(0.25)
    expect(off(5, 60, 32)).toBeLessThan(0.27)
  })

  it('of one water is that water', () => {
    expect(expectOk(heatBalance([poured(300, 21), poured(200, 21)]))).toMatchObject({
      temperature: expect.closeTo(21, 8),
      volume: expect.closeTo(500, 6),
    })
  })

  it('is refused for nothing at all', () => {
    expect(code(heatBalance([poured(0, 20)]))).toBe('thermal.nothing-to-mix')
    expect(heatBalance([poured(1, 20), { volume: millilitres(1), temperature: 100 as Celsius }])).toMatchObject({
      problem: { field: 'parts[1].temperature' },
    })
  })
})

describe('pouring into a tank', () => {
  it('comes to the wanted temperature with all that it meets', () => {
    fc.assert(
      fc.property(
        between(15, 40),
        between(200, 2000),
        fc.array(warmth, { minLength: 1, maxLength: 4 }),
        (t, m, met) => {
          const small = met.map((thing) => ({ ...thing, water: (thing.water / 40) as Grams }))
          const found = pourAt(celsius(t), grams(m), small)
          fc.pre(found.ok)
          const { pour, change, taken } = expectOk(found)
          expect(expectOk(blended([worth(m, pour), ...small]))).toBeCloseTo(t, 8)
          expect(pour - t).toBeCloseTo(change, 10)
          expect(taken.reduce((sum, one) => sum + one, 0)).toBeCloseTo(change, 10)
        },
      ),
      runs,
    )
  })

  it('a cold tank wants a warmer pour, a warm one a cooler', () => {
    expect(expectOk(pourAt(celsius(20), grams(500), [worth(100, 15)])).pour).toBeCloseTo(21, 10)
    expect(expectOk(pourAt(celsius(20), grams(500), [worth(100, 25)])).pour).toBeCloseTo(19, 10)
    expect(expectOk(pourAt(celsius(20), grams(500), [worth(100, 20)])).change).toBe(0)
  })

  it('is refused when nobody could pour it so', () => {
    expect(code(pourAt(celsius(20), grams(100), [worth(100, 41)]))).toBe('thermal.pour-out-of-reach')
    expect(code(pourAt(celsius(38), grams(100), [worth(100, 15)]))).toBe('thermal.pour-out-of-reach')
    expect(pourAt(celsius(20), grams(9), [worth(1, 20)])).toMatchObject({ problem: { field: 'solution' } })
    expect(pourAt(celsius(61), grams(100), [worth(1, 20)])).toMatchObject({ problem: { field: 'wanted' } })
    expect(code(pourAt(celsius(20), grams(100), []))).toBe('thermal.bad-value')
  })

  it('steel counts for little, plastic for more', () => {
    const count = (material: 'steel' | 'plastic') => expectOk(worthInWater(grams(250), material))
    expect(count('steel')).toBeCloseTo(30, 10)
    expect(count('plastic')).toBeCloseTo(100, 10)
    expect(worthInWater(-1 as Grams, 'film')).toMatchObject({ problem: { field: 'mass' } })
  })
})

describe('ice', () => {
  it('takes the heat of melting and that of warming the meltwater', () => {
    // Balance by hand: 1000 g losing 10 degrees against ice melting and its water warming from 0 to 10.
    const { ice, place } = expectOk(iceFor(grams(1000), celsius(20), celsius(10)))
    expect(ice * (333.55 / 4.184) + ice * 10).toBeCloseTo(1000 * 10, 6)
    expect(place).toBe('outside-the-bath')
  })

  it('none for what is cold enough, and none that warms', () => {
    expect(expectOk(iceFor(grams(1000), celsius(20), celsius(20))).ice).toBe(0)
    expect(iceFor(grams(1000), celsius(20), celsius(20.1))).toMatchObject({ problem: { field: 'wanted' } })
    expect(iceFor(grams(1000), celsius(20), celsius(-1))).toMatchObject({ problem: { field: 'wanted' } })
  })
})
