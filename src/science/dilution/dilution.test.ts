import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { expectOk, type Millilitres, millilitres, type Result } from '../../kernel/index.js'
import {
  chained,
  colonReadings,
  concentrateAndStock,
  eachReading,
  floorFor,
  intoOrUpTo,
  mix,
  mostFrom,
  mostFromStocks,
  strengthOf,
  waysOut,
} from './index.js'

const mL = millilitres
const near = (value: number) => expect.closeTo(value, 9)
const runs = { seed: 20_261, numRuns: 300 }
const part = fc.double({ min: 0.01, max: 1000, noNaN: true })
const ratio = fc.array(part, { minLength: 1, maxLength: 4 })
const total = fc.double({ min: 1, max: 50_000, noNaN: true }) as unknown as fc.Arbitrary<Millilitres>
const refusal = <T>(result: Result<T>) => (result.ok ? null : [result.problem.code, result.problem.field])

describe('a ratio in a volume', () => {
  it('shares it out by parts', () => {
    expect(expectOk(mix([1, 2], mL(300))).parts).toEqual([near(100), near(200)])
    expect(expectOk(mix([1, 1, 8], mL(500))).parts).toEqual([near(50), near(50), near(400)])
    expect(expectOk(mix([1], mL(250))).parts).toEqual([250])
  })

  it('adds up, keeps its proportion, and takes twice of all for twice the volume', () => {
    fc.assert(
      fc.property(ratio, total, (parts, volume) => {
        const { parts: shares } = expectOk(mix(parts, volume))
        expect(shares.reduce((sum, one) => sum + one, 0) / volume).toBeCloseTo(1, 9)
        const twice = expectOk(mix(parts, (2 * volume) as Millilitres)).parts
        shares.forEach((share, i) => {
          expect(share * (parts[0] as number)).toBeCloseTo((shares[0] as number) * (parts[i] as number), 3)
          expect((twice[i] as number) / share).toBeCloseTo(2, 9)
        })
      }),
      runs,
    )
  })

  it('is refused out of its ranges', () => {
    expect(refusal(mix([], mL(300)))).toEqual(['dilution.bad-value', 'parts'])
    expect(refusal(mix([1, 1, 1, 1, 1], mL(300)))).toEqual(['dilution.bad-value', 'parts'])
    expect(refusal(mix([1, 0], mL(300)))).toEqual(['dilution.bad-value', 'parts[1]'])
    expect(refusal(mix([1, Number.NaN], mL(300)))).toEqual(['dilution.bad-value', 'parts[1]'])
    expect(refusal(mix([1, 4], mL(0.5)))).toEqual(['dilution.bad-value', 'total'])
  })
})

describe('limited stock', () => {
  it('makes the most: the inverse of mixing', () => {
    fc.assert(
      fc.property(ratio, fc.double({ min: 5, max: 90, noNaN: true }), (parts, stock) => {
        const made = expectOk(mostFrom(parts, mL(stock)))
        fc.pre(made.total < 100_000)
        expect(made.parts[0]).toBeCloseTo(stock, 6)
      }),
      runs,
    )
  })

  it('of several parts the scarcest decides, and the rest is left', () => {
    // B is scarce: 30 mL of it allow 30 × 12 / 3 = 120 mL, which take 20 of the 25 mL of A.
    const { mixture, limitedBy, left } = expectOk(mostFromStocks([2, 3, 7], [mL(25), mL(30), null]))
    expect(mixture).toEqual({ total: near(120), parts: [near(20), near(30), near(70)] })
    expect(limitedBy).toBe(1)
    expect(left).toEqual([near(5), near(0), null])
  })

  it('goes by the tenth of a millilitre, as a syringe tells: half of one at 1 + 200', () => {
    expect(expectOk(mostFrom([1, 200], mL(0.5))).total).toBeCloseTo(100.5, 9)
    expect(expectOk(mostFromStocks([1, 200], [mL(0.5)])).mixture.total).toBeCloseTo(100.5, 9)
    expect(refusal(mostFrom([1, 200], mL(0.05)))).toEqual(['dilution.bad-value', 'stock'])
  })

  it('needs a stock, and no more than parts', () => {
    expect(refusal(mostFromStocks([1, 1], [null]))).toEqual(['dilution.stocks-mismatch', 'stocks'])
    expect(refusal(mostFromStocks([1], [mL(5), mL(5)]))).toEqual(['dilution.stocks-mismatch', 'stocks'])
    expect(refusal(mostFromStocks([1, 1], [null, 0.05 as Millilitres]))).toEqual(['dilution.bad-value', 'stocks[1]'])
  })
})

describe('dilutions one after the other', () => {
  it('are as strong as the product of their strengths', () => {
    fc.assert(
      fc.property(part, part, (a, b) => {
        const both = expectOk(
          chained([
            [1, a],
            [1, b],
          ]),
        )
        expect((1 + both[1]) / ((1 + a) * (1 + b))).toBeCloseTo(1, 9)
        expect(
          expectOk(
            chained([
              [1, b],
              [1, a],
            ]),
          )[1],
        ).toBeCloseTo(both[1], 4)
      }),
      runs,
    )
    expect(expectOk(chained([[1, 2], [1], [1, 2]]))).toEqual([1, near(8)])
  })

  it('of more than two parts are refused', () => {
    expect(
      refusal(
        chained([
          [1, 1, 8],
          [1, 1],
        ]),
      )?.[0],
    ).toBe('dilution.chain-of-two-parts')
  })
})

describe('a colon', () => {
  it('is read both ways, and the second is stronger', () => {
    const { plus, within, stronger } = expectOk(colonReadings(9, mL(500)))
    expect([plus.parts, within.parts]).toEqual([
      [near(50), near(450)],
      [near(500 / 9), near(4000 / 9)],
    ])
    expect(stronger).toBeCloseTo(10 / 9, 9)
  })

  it('of any two numbers comes to what each reading holds', () => {
    const [one, other] = expectOk(eachReading([{ parts: [2, 3] }, { parts: [2, 1] }], mL(300)))
    expect([one?.strength, other?.strength]).toEqual([near(0.4), near(2 / 3)])
    expect(eachReading([{ parts: [0, 3] }], mL(300)).ok).toBe(false)
  })

  it('under two or past a thousand is refused', () => {
    for (const n of [1, 1.9, 1001, Number.NaN]) expect(refusal(colonReadings(n, mL(300)))?.[1]).toBe('n')
  })
})

describe('so much into a volume', () => {
  it('made up to it is one part stronger than poured into it', () => {
    const { madeUpTo, pouredInto } = expectOk(intoOrUpTo(mL(20), mL(200)))
    expect(madeUpTo).toEqual({ parts: [1, near(9)], mixture: { total: 200, parts: [near(20), near(180)] } })
    expect(pouredInto).toEqual({ parts: [1, near(10)], mixture: { total: 220, parts: [near(20), near(200)] } })
  })

  it('of a large volume is no thinner than a ratio may be', () => {
    expect(expectOk(intoOrUpTo(mL(50), mL(20_000))).madeUpTo.mixture.parts).toEqual([near(50), near(19_950)])
    expect(refusal(intoOrUpTo(mL(1), mL(1002)))?.[0]).toBe('dilution.bad-value')
    expect(refusal(intoOrUpTo(mL(1), 100_001 as Millilitres))?.[1]).toBe('volume')
  })

  it('must be less than the volume', () => {
    for (const amount of [0, 200, 201, Number.NaN])
      expect(refusal(intoOrUpTo(amount as Millilitres, mL(200)))?.[0]).toBe('dilution.more-than-total')
  })
})

describe('from concentrate or from stock', () => {
  it('are one bath by two names', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 20, noNaN: true }),
        fc.double({ min: 0.1, max: 40, noNaN: true }),
        (stock, further) => {
          const thin = (1 + stock) * (1 + further) - 1
          fc.pre(thin <= 1000)
          const { fromStock, fromConcentrate, factor } = expectOk(concentrateAndStock([1, stock], [1, thin]))
          expect(fromStock[1]).toBeCloseTo(further, 6)
          expect(fromConcentrate[1]).toBeCloseTo(thin, 6)
          expect(factor).toBeCloseTo(1 + stock, 9)
        },
      ),
      runs,
    )
  })

  it('the stock itself is stock, and nothing stronger comes from it', () => {
    expect(expectOk(concentrateAndStock([1, 3], [1, 3])).fromStock).toEqual([1, 0])
    expect(refusal(concentrateAndStock([1, 3], [1, 2]))?.[0]).toBe('dilution.stronger-than-stock')
  })
})

describe('a floor for each roll', () => {
  const asked = { parts: [1, 49], volume: mL(500), floor: mL(8), rolls: 2 }

  it('against what the volume holds', () => {
    // 500 mL at 1 + 49 hold 10 mL; two rolls need 16, which 800 mL hold, or 16 + 484 in this volume.
    expect(expectOk(floorFor(asked))).toEqual({
      enough: false,
      held: near(10),
      needed: 16,
      rolls: 1,
      volumeNeeded: near(800),
      dilutionNeeded: [1, near(484 / 16)],
    })
    expect(expectOk(floorFor({ ...asked, floor: mL(5) })).enough).toBe(true)
    expect(expectOk(floorFor({ ...asked, floor: mL(5.01) })).enough).toBe(false)
  })

  it('is met by its own ways out, and by nothing thinner', () => {
    const size = fc.double({ min: 200, max: 2000, noNaN: true })
    fc.assert(
      fc.property(fc.double({ min: 1, max: 200, noNaN: true }), size, fc.integer({ min: 1, max: 8 }), (n, v, rolls) => {
        const one = { parts: [1, n], volume: mL(v), floor: mL(7), rolls }
        const { volumeNeeded, dilutionNeeded, rolls: carried } = expectOk(floorFor(one))
        expect(expectOk(floorFor({ ...one, volume: mL(volumeNeeded + 1e-6) })).enough).toBe(true)
        expect(expectOk(floorFor({ ...one, volume: mL(volumeNeeded * 0.99) })).enough).toBe(false)
        if (carried > 0) expect(expectOk(floorFor({ ...one, rolls: carried })).enough).toBe(true)
        expect(expectOk(floorFor({ ...one, rolls: carried + 1 })).enough).toBe(false)
        const strength = dilutionNeeded === null ? 0 : expectOk(strengthOf(dilutionNeeded))
        if (dilutionNeeded !== null) expect(strength * v).toBeCloseTo(7 * rolls, 6)
        else expect(7 * rolls).toBeGreaterThan(v)
      }),
      runs,
    )
  })

  it('of two-part developers strengthens both parts and thins with the water alone', () => {
    const { dilutionNeeded } = expectOk(floorFor({ parts: [1, 2, 97], volume: mL(500), floor: mL(10), rolls: 2 }))
    expect(dilutionNeeded).toEqual([1, near(2), near(500 / 20 - 3)])
    expect(expectOk(floorFor({ parts: [1, 1], volume: mL(20), floor: mL(10), rolls: 2 })).dilutionNeeded).toEqual([1])
    expect(expectOk(floorFor({ parts: [1, 1], volume: mL(19), floor: mL(10), rolls: 2 })).dilutionNeeded).toBeNull()
  })

  it('names the smallest tank, the thinnest dilution and the number of fills', () => {
    const tanks = [
      { name: 'large', holds: mL(1000), rolls: 4 },
      { name: 'one reel', holds: mL(805), rolls: 1 },
      { name: 'middle', holds: mL(810), rolls: 2 },
      { name: 'small', holds: mL(500), rolls: 2 },
    ]
    expect(
      expectOk(
        waysOut(asked, tanks, [
          [1, 49],
          [1, 24],
          [1, 14],
        ]),
      ),
    ).toEqual({
      tank: tanks[2],
      dilution: [1, 24],
      fills: 2,
    })
    expect(expectOk(waysOut({ ...asked, floor: mL(11) }, tanks.slice(3), [[1, 49]]))).toEqual({
      tank: null,
      dilution: null,
      fills: null,
    })
  })

  it('is refused out of its ranges', () => {
    expect(refusal(floorFor({ ...asked, rolls: 0 }))?.[1]).toBe('rolls')
    expect(refusal(floorFor({ ...asked, floor: 0 as Millilitres }))?.[1]).toBe('floor')
    expect(refusal(floorFor({ ...asked, floor: mL(2000), rolls: 200 }))?.[1]).toBe('rolls')
    expect(waysOut(asked, [], [[0, 1]]).ok).toBe(false)
  })
})
