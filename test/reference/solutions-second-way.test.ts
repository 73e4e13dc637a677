import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { celsius, expectOk, grams, millilitres, seconds } from '../../src/kernel/index.js'
import {
  ACIDS,
  type AcidName,
  ageOf,
  crissCross,
  HEAT_OF_FUSION,
  HEAT_OF_WATER,
  heatBalance,
  iceFor,
  meanOver,
  molarMass,
  pHOf,
  rollsByVolume,
  standsAt,
  stopCapacity,
} from '../../src/science/index.js'
import elements from './data/atomic-weights.json' with { type: 'json' }
import table from './data/water-properties.json' with { type: 'json' }
import { between } from './negatives-support.js'
import { crossing, integrated } from './ode.js'
import { seeded } from './support.js'

/** Differences as a part of the figure. */
const part = (found: number, expected: number) => Math.abs(found / expected - 1)

/** Density in g/mL and heat in J/g above 0 °C by straight lines between the rows of the printed table. */
function tabulated(at: number): { density: number; heat: number } {
  const rows = table.water
  let heat = 0
  for (let i = 1; i < rows.length; i++) {
    const [low, high] = [rows[i - 1], rows[i]] as [(typeof rows)[0], (typeof rows)[0]]
    const along = Math.min(1, (at - low.celsius) / (high.celsius - low.celsius))
    const cp = low.heat_capacity + along * (high.heat_capacity - low.heat_capacity)
    heat += ((low.heat_capacity + cp) / 2) * along * (high.celsius - low.celsius)
    if (along < 1 || i === rows.length - 1)
      return { density: (low.density + along * (high.density - low.density)) / 1000, heat }
  }
  throw new RangeError(`${at} °C is past the table.`)
}

describe('warmth, by tables and by small steps', () => {
  const water = fc.tuple(between(50, 1000), between(1, 60))

  it('mixtures by the printed densities and heat capacities', () => {
    fc.assert(
      fc.property(fc.array(water, { minLength: 2, maxLength: 4 }), (parts) => {
        const masses = parts.map(([volume, at]) => volume * tabulated(at).density)
        const mass = masses.reduce((sum, one) => sum + one, 0)
        const heat = parts.reduce((sum, [, at], i) => sum + (masses[i] as number) * tabulated(at).heat, 0) / mass
        const temperature = crossing((at) => tabulated(at).heat - heat, 0.02, 79)
        const found = expectOk(
          heatBalance(parts.map(([volume, at]) => ({ volume: millilitres(volume), temperature: celsius(at) }))),
        )
        // The table's lines bend between its rows; a fiftieth of a degree is far below what the rule is told to hold.
        expect(Math.abs(found.temperature - temperature)).toBeLessThan(0.02)
      }),
      seeded(200),
    )
  })

  it('the simple rule holds within 0.15 °C for baths of 18–24 °C out of taps of 10–50 °C', () => {
    fc.assert(
      fc.property(between(10, 17), between(25, 50), between(18, 24), (cold, hot, wanted) => {
        const share = (wanted - cold) / (hot - cold)
        const parts = [
          { volume: millilitres(1000 * share), temperature: celsius(hot) },
          { volume: millilitres(1000 * (1 - share)), temperature: celsius(cold) },
        ]
        expect(Math.abs(expectOk(heatBalance(parts)).temperature - wanted)).toBeLessThan(0.15)
      }),
      seeded(200),
    )
  })

  it('standing: dT/dt = −(T − Ta)/τ and its mean, by the ODE library', () => {
    fc.assert(
      fc.property(
        between(2, 60),
        between(-10, 40),
        between(600, 20_000),
        between(10, 7200),
        (from, around, tau, time) => {
          const standing = { from: celsius(from), around: celsius(around), constant: seconds(tau) }
          const there = integrated((_, at) => -(at - around) / tau, 0, from, time)
          expect(expectOk(standsAt(standing, seconds(time)))).toBeCloseTo(there, 7)
          const sum = integrated((at) => integrated((_, t) => -(t - around) / tau, 0, from, at), 0, 0, time)
          expect(expectOk(meanOver(standing, seconds(time)))).toBeCloseTo(sum / time, 6)
        },
      ),
      seeded(15),
    )
  })

  it('ice: heat taken by melting and warming against heat given, tried until they meet', () => {
    fc.assert(
      fc.property(between(100, 5000), between(10, 40), between(0, 1), (mass, from, share) => {
        const wanted = from * share
        const over = (ice: number) =>
          ice * (HEAT_OF_FUSION.value + HEAT_OF_WATER.value * wanted) - mass * HEAT_OF_WATER.value * (from - wanted)
        const { ice } = expectOk(iceFor(grams(mass), celsius(from), celsius(wanted)))
        expect(ice).toBeCloseTo(crossing(over, 0, mass), 6)
      }),
      seeded(200),
    )
  })
})

describe('acids, by trying', () => {
  const names = Object.keys(ACIDS) as AcidName[]
  const mixture = fc.record({
    acids: fc.array(fc.record({ acid: fc.constantFrom(...names), molarity: between(0.001, 1) }), {
      minLength: 1,
      maxLength: 3,
    }),
    spectators: between(-0.5, 3),
  })

  /** Charge of an acid by its equilibria, one after the other, not by parts of a whole. */
  function chargeOf(acid: AcidName, hydrogen: number): number {
    let [form, whole, charge] = [1, 1, 0]
    ACIDS[acid].pKa.forEach((pKa, i) => {
      form *= 10 ** -pKa / hydrogen
      whole += form
      charge += (i + 1) * form
    })
    return charge / whole
  }

  it('pH: walk along in hundredths until charges balance, then halve', () => {
    fc.assert(
      fc.property(mixture, (solution) => {
        const over = (pH: number) => {
          const hydrogen = 10 ** -pH
          const negative = solution.acids.reduce((sum, one) => sum + one.molarity * chargeOf(one.acid, hydrogen), 0)
          return solution.spectators + hydrogen - 1e-14 / hydrogen - negative
        }
        const found = pHOf(solution)
        if (!found.ok) return expect(over(-1) < 0 || over(15) > 0).toBe(true)
        let pH = -1
        while (pH < 15 && over(pH + 0.01) > 0) pH += 0.01
        expect(found.value).toBeCloseTo(crossing(over, pH, pH + 0.01), 6)
      }),
      seeded(100),
    )
  })

  it('stop bath: rolls go in one by one until the indicator begins to turn', () => {
    fc.assert(
      fc.property(between(0.05, 0.5), fc.constantFrom('acetic' as const, 'citric' as const), (molarity, acid) => {
        const each = 0.005
        const spectators = (rolls: number) => rolls * each
        let rolls = 0
        while (expectOk(pHOf({ acids: [{ acid, molarity }], spectators: spectators(rolls + 1) })) < 5.2) rolls++
        const { byAcid } = expectOk(
          stopCapacity({
            volume: millilitres(1000),
            molarity,
            acid,
            carried: { volume: millilitres(20), alkali: 0.25, origin: 'assumption' },
          }),
        )
        // Free acid at pH 5.2 is 6e-6 mol, a thousandth of a roll.
        expect(Math.abs(Math.floor(byAcid + 0.002) - rolls)).toBeLessThanOrEqual(byAcid % 1 > 0.997 ? 1 : 0)
      }),
      seeded(60),
    )
  })
})

describe('sums of other kinds', () => {
  const { weights, tolerance } = elements
  const symbols = Object.keys(weights) as (keyof typeof weights)[]
  const atoms = fc.array(fc.tuple(fc.constantFrom(...symbols), fc.integer({ min: 1, max: 12 })), {
    minLength: 1,
    maxLength: 4,
  })
  const text = (list: readonly (readonly [string, number])[]) =>
    list.map(([symbol, count]) => `${symbol}${count === 1 ? '' : count}`).join('')
  const weight = (list: readonly (readonly [keyof typeof weights, number])[]) =>
    list.reduce((sum, [symbol, count]) => sum + count * weights[symbol], 0)

  it('molar masses: added up as the formula is built', () => {
    fc.assert(
      fc.property(
        atoms,
        atoms,
        fc.integer({ min: 1, max: 4 }),
        fc.integer({ min: 0, max: 12 }),
        fc.constantFrom('.', '·', '*'),
        (plain, group, times, waters, dot) => {
          const hydrate = waters === 0 ? '' : `${dot}${waters === 1 ? '' : waters}H2O`
          const formula = `${text(plain)}(${text(group)})${times === 1 ? '' : times}${hydrate}`
          const expected = weight(plain) + times * weight(group) + waters * (2 * weights.H + weights.O)
          expect(part(expectOk(molarMass(formula)), expected)).toBeLessThan(tolerance.value)
        },
      ),
      seeded(500),
    )
  })

  it('criss-cross: mix the parts and look at the strength', () => {
    fc.assert(
      fc.property(between(0, 50), between(1, 50), between(0, 1), (weak, more, share) => {
        const strong = weak + more
        const wanted = weak + more * share
        const parts = expectOk(crissCross(strong, weak, wanted))
        const held = parts.strong * strong + parts.weak * weak
        expect(held / (parts.strong + parts.weak)).toBeCloseTo(wanted, 9)
      }),
      seeded(200),
    )
  })

  it('age: day by day', () => {
    const stretch = fc.record({
      state: fc.constantFrom('full' as const, 'half-full' as const),
      days: fc.integer({ min: 0, max: 60 }),
    })
    fc.assert(
      fc.property(
        fc.array(stretch, { minLength: 1, maxLength: 5 }),
        fc.integer({ min: 30, max: 200 }),
        fc.integer({ min: 20, max: 90 }),
        (stretches, full, half) => {
          const lives = { full, 'half-full': half, tray: null, tank: null }
          let used = 0
          for (const { state, days } of stretches) for (let day = 0; day < days; day++) used += 1 / lives[state]
          expect(expectOk(ageOf(stretches, lives)).used).toBeCloseTo(used, 9)
        },
      ),
      seeded(200),
    )
  })

  it('rolls by volume: fill by fill', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 5000 }),
        fc.integer({ min: 100, max: 1000 }),
        fc.integer({ min: 1, max: 100 }),
        fc.integer({ min: 1, max: 4 }),
        (inBottle, fill, lost, rollsPerFill) => {
          let [left, rolls] = [inBottle, 0]
          for (; left >= fill; left -= lost) rolls += rollsPerFill
          const asked = {
            inBottle: millilitres(inBottle),
            fill: millilitres(fill),
            lost: millilitres(lost),
            rollsPerFill,
          }
          expect(expectOk(rollsByVolume(asked))).toBe(rolls)
        },
      ),
      seeded(200),
    )
  })
})
