import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { celsius } from '../../kernel/index.js'
import { judgeTemperatures, type SpreadBath } from './index.js'

const bath = (temperature: number, of: Partial<SpreadBath> = {}): SpreadBath => ({
  temperature: celsius(temperature),
  develops: false,
  window: null,
  ...of,
})
const developer = (temperature: number) => bath(temperature, { develops: true })
const bleach = (temperature: number) => bath(temperature, { window: { from: celsius(24), to: celsius(41) } })

describe('how baths lie to each other', () => {
  it('says 1.1 degrees, refuses 2.8, and is quiet below', () => {
    const verdict = (temperature: number) => judgeTemperatures([developer(20), bath(temperature)])
    expect(verdict(21.09)).toEqual({ outside: [], pairs: [], chain: null, refused: false })
    expect(verdict(18.9).pairs).toEqual([{ bath: 1, other: 0, by: expect.closeTo(1.1, 9), verdict: 'said' }])
    expect(verdict(22.79)).toMatchObject({ pairs: [{ verdict: 'said' }], refused: false })
    expect(verdict(22.8)).toMatchObject({ pairs: [{ verdict: 'refused' }], chain: null, refused: true })
  })

  it('judges a bath by whichever lies farther, the developer or the bath before', () => {
    const { pairs } = judgeTemperatures([bath(21), developer(20), bath(19.5), bath(21.2)])
    expect(pairs).toEqual([{ bath: 3, other: 2, by: expect.closeTo(1.7, 9), verdict: 'said' }])
  })

  it('refuses a chain of small drops, and names its ends', () => {
    const verdict = judgeTemperatures([bath(22.4), developer(21), bath(20), bath(19.5)])
    expect(verdict.pairs.every((pair) => pair.verdict === 'said')).toBe(true)
    expect(verdict).toMatchObject({ chain: { first: 0, last: 3, by: expect.closeTo(2.9, 9) }, refused: true })
  })

  it('judges a bath with a window by that alone', () => {
    expect(judgeTemperatures([developer(38), bleach(24), bath(38)])).toMatchObject({ outside: [], refused: false })
    expect(judgeTemperatures([developer(38), bleach(23.9)])).toMatchObject({ outside: [1], pairs: [], refused: false })
    expect(judgeTemperatures([developer(38), bleach(41.1)]).outside).toEqual([1])
  })

  it('refuses nothing that lies within 2.8 degrees in all, whatever the order', () => {
    const degrees = fc.array(fc.double({ min: 18, max: 20.79, noNaN: true }), { minLength: 1, maxLength: 8 })
    fc.assert(
      fc.property(degrees, (temperatures) => {
        const baths = temperatures.map((temperature, i) => bath(temperature, { develops: i === 1 }))
        expect(judgeTemperatures(baths).refused).toBe(false)
        const shifted = [...baths, bath(Math.min(...temperatures) + 2.81)]
        expect(judgeTemperatures(shifted).refused).toBe(true)
      }),
      { seed: 20_261, numRuns: 300 },
    )
  })
})
