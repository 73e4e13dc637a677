import { describe, expect, it } from 'vitest'
import { expectOk, millilitres, seconds } from '../../kernel/index.js'
import {
  clearingTrend,
  clearingVerdict,
  type FilmFixed,
  type FixerInUse,
  fixerLeft,
  rollsToSilver,
  secondBathShare,
  silverAfter,
  silverLimit,
  twoBaths,
} from './index.js'

const test = (rolls: number, clearing: number) => ({ rolls, clearing: seconds(clearing) })
const ordinary = (rolls: number): FilmFixed => ({ rolls, family: 'ordinary' })
/** A litre of ammonium fixer for twenty rolls, changed where a test needs it. */
const bath = (changed: Partial<FixerInUse> = {}): FixerInUse => ({
  kind: 'ammonium-thiosulfate',
  volume: millilitres(1000),
  rollsPerLitre: 20,
  fixed: [],
  ...changed,
})

describe('a clearing test', () => {
  it('35 s fresh and 55 s now: 1:50, or 2:45 for a slow emulsion, and the bin at 1:10', () => {
    const found = expectOk(clearingVerdict(seconds(35), seconds(55)))
    expect(found).toMatchObject({ fixFor: 110, verdict: 'usable', finishedAt: 70 })
    for (const family of ['tabular', 'high-iodide'] as const)
      expect(expectOk(clearingVerdict(seconds(35), seconds(55), family)).fixFor).toBe(165)
  })

  it('at exactly twice the fresh time the bath is finished, a tenth of a second before it is not', () => {
    const at = (now: number) => expectOk(clearingVerdict(seconds(29.7), seconds(now))).verdict
    expect([at(59.3), at(59.4), at(59.5)]).toEqual(['usable', 'finished', 'finished'])
  })

  it.each([
    [2, 30],
    [30, 3601],
    [Number.NaN, 30],
  ])('%s s fresh and %s s now is refused', (fresh, now) => {
    const found = clearingVerdict(fresh as never, now as never)
    expect(found.ok ? found.value : found.problem.code).toBe('fixing.bad-value')
  })
})

describe('the trend of clearing tests', () => {
  it('a line without scatter doubles where it says, with no width', () => {
    const found = expectOk(clearingTrend(seconds(30), [test(6, 36), test(12, 42)]))
    expect(found.endsAt).toBeCloseTo(30, 9)
    expect(found.low).toBeCloseTo(30, 6)
    expect(found.high).toBeCloseTo(30, 6)
    expect([found.perRoll, found.tests]).toEqual([expect.closeTo(1, 12), 3])
  })

  it('two tests tell an end but no interval', () => {
    expect(expectOk(clearingTrend(seconds(30), [test(10, 45)]))).toMatchObject({
      endsAt: expect.closeTo(20, 9),
      low: null,
      high: null,
    })
  })

  it('scatter makes an interval about the end, wider with more scatter', () => {
    const width = (off: number) => {
      const { low, high, endsAt } = expectOk(
        clearingTrend(seconds(30), [test(0, 30 + off), test(4, 34 - off), test(8, 38 + off), test(12, 42 - off)]),
      )
      expect(low).toBeLessThan(endsAt)
      expect(high).toBeGreaterThan(endsAt)
      return (high as number) - (low as number)
    }
    expect(width(1)).toBeGreaterThan(width(0.5))
  })

  it('a slope that may be none leaves both ends open', () => {
    const found = expectOk(clearingTrend(seconds(30), [test(0, 30), test(2, 34), test(4, 31)]))
    expect([found.low, found.high]).toEqual([null, null])
  })

  it('a last test that finds it finished ends it there, even against the line', () => {
    const found = expectOk(clearingTrend(seconds(30), [test(0, 30), test(5, 31), test(10, 32), test(15, 60)]))
    expect(found.endsAt).toBe(15)
    expect(expectOk(clearingTrend(seconds(30), [test(0, 90), test(5, 61)])).endsAt).toBe(5)
  })

  it('one test at one count is enough to find it finished', () => {
    expect(expectOk(clearingTrend(seconds(30), [test(0, 60)]))).toMatchObject({ endsAt: 0, perRoll: null })
  })

  it('a wrong test that a later one corrects does not end it', () => {
    expect(expectOk(clearingTrend(seconds(30), [test(3, 60), test(10, 40), test(15, 45)])).endsAt).toBeGreaterThan(15)
  })

  it.each([
    ['no growth', [test(4, 30), test(8, 29)], 'fixing.no-trend'],
    ['growth that no one lives to see', [test(4, 30.000_01)], 'fixing.no-trend'],
    ['one count only', [test(0, 30)], 'fixing.too-few-tests'],
    ['a time of nothing', [test(4, 0)], 'fixing.bad-value'],
  ] as const)('is refused: %s', (_, tests, code) => {
    const found = clearingTrend(seconds(30), tests)
    expect(found.ok ? found.value : found.problem.code).toBe(code)
  })
})

describe('silver in the bath', () => {
  const FILM = { gramsPerM2: 5, share: 0.6 }
  it('20 rolls of 5 g/m², 0.6 of it, in a litre are 3.10 g/L; 2 g/L is there at 12.9 rolls', () => {
    expect(expectOk(silverAfter(20, millilitres(1000), FILM)).usual).toBeCloseTo(3.1, 2)
    expect(expectOk(rollsToSilver(2, 5, 0.6))).toBeCloseTo(12.9, 1)
  })

  it('an estimate stands within its band; a film of known silver has none', () => {
    const guess = expectOk(silverAfter(10, millilitres(500)))
    expect(guess.low).toBeLessThan(guess.usual)
    expect(guess.high).toBeGreaterThan(guess.usual)
    const known = expectOk(silverAfter(10, millilitres(500), FILM))
    expect([known.low, known.high]).toEqual([known.usual, known.usual])
    expect(known.usual).toBeCloseTo(guess.usual, 12)
  })

  it('one may go below the guide’s limit, never above it', () => {
    expect(expectOk(silverLimit('sodium-thiosulfate', 0.5))).toBe(0.5)
    const above = silverLimit('sodium-thiosulfate', 2.5)
    expect(above.ok ? above.value : above.problem.sentence).toMatch(/2\.5 g\/L is above the 2 g\/L/)
    expect(silverLimit('sodium-thiosulfate', Number.NaN).ok).toBe(false)
  })
})

describe('rolls left in a fixer', () => {
  it('5 ordinary rolls and 3 at 0.6 in a bath for twelve leave 2 or 1', () => {
    const fixed = [ordinary(5), { rolls: 3, family: 'tabular' } as const]
    const left = expectOk(fixerLeft(bath({ volume: millilitres(600), fixed })))
    expect([left.taken, left.carries]).toEqual([expect.closeTo(10, 9), 12])
    expect(left.whole).toEqual({ ordinary: 2, tabular: 1, 'high-iodide': 1 })
    expect(left.decides).toBe('count')
  })

  it('of a litre for twenty the count decides at ammonium, silver at sodium thiosulfate', () => {
    const film = { gramsPerM2: 5, share: 0.6 }
    expect(expectOk(fixerLeft(bath({ film })))).toMatchObject({ decides: 'count', rolls: 20, silverLimit: 4 })
    const sodium = expectOk(fixerLeft(bath({ film, kind: 'sodium-thiosulfate' })))
    expect([sodium.decides, sodium.silverLimit]).toEqual(['silver', 2])
    expect(sodium.rolls).toBeCloseTo(12.9, 1)
    expect(sodium.whole.ordinary).toBe(12)
  })

  it('a lower limit of one’s own takes over', () => {
    const left = expectOk(fixerLeft(bath({ silverLimit: 1, fixed: [ordinary(2)] })))
    expect(left.decides).toBe('silver')
    expect(left.rolls).toBeCloseTo(expectOk(rollsToSilver(1)) - 2, 9)
  })

  it('tests decide when they end it sooner, counted from fresh', () => {
    const tests = { fresh: seconds(30), made: [test(4, 40), test(6, 45)] }
    const left = expectOk(fixerLeft(bath({ fixed: [ordinary(6)], tests })))
    expect(left.decides).toBe('tests')
    expect(left.rolls).toBeCloseTo(6, 6)
  })

  it('tests that show no growth leave the others to decide and say why; wrong tests are refused', () => {
    const left = expectOk(fixerLeft(bath({ tests: { fresh: seconds(30), made: [test(4, 29)] } })))
    expect([left.by.tests, left.decides, left.noTrend?.code]).toEqual([null, 'count', 'fixing.no-trend'])
    expect(fixerLeft(bath({ tests: { fresh: seconds(1), made: [] } })).ok).toBe(false)
  })

  it('a bottle that fills no tank decides', () => {
    const fills = { inBottle: millilitres(480), fill: millilitres(500), rollsPerFill: 2, lost: millilitres(20) }
    expect(expectOk(fixerLeft(bath({ fills })))).toMatchObject({ decides: 'volume', rolls: 0 })
  })

  it('a label’s own part of the count replaces the assumed one', () => {
    const left = expectOk(fixerLeft(bath({ fixed: [{ rolls: 4, family: 'tabular', capacity: 0.8 }] })))
    expect(left.taken).toBeCloseTo(5, 12)
  })

  it('an overfull bath has none left, not fewer than none', () => {
    const left = expectOk(fixerLeft(bath({ fixed: [ordinary(40)] })))
    expect([left.rolls, left.whole.tabular, left.by.silver]).toEqual([0, 0, 0])
  })

  it.each([
    ['a thimble', { volume: millilitres(49) }],
    ['a capacity of none', { rollsPerLitre: 0 }],
    ['rolls below none', { fixed: [ordinary(-1)] }],
    ['a part of the count of none', { fixed: [{ rolls: 1, family: 'ordinary', capacity: 0 } as const] }],
  ])('is refused: %s', (_, changed) => {
    const left = fixerLeft(bath(changed))
    expect(left.ok ? left.value : left.problem.code).toBe('fixing.bad-value')
  })
})

describe('two baths', () => {
  const rolls = { done: 12, capacity: 25 }
  it('12 of 25 rolls and 40 of 67 sheets are 1.08: rotate', () => {
    const found = expectOk(twoBaths([rolls, { done: 40, capacity: 67 }]))
    expect(found.used).toBeCloseTo(1.08, 2)
    expect(found).toMatchObject({ verdict: 'rotate', because: ['count'], left: [0, 0] })
  })

  it('exactly full is full, whatever the last digit says', () => {
    const parts = [1, 2, 7].map((done) => ({ done, capacity: 10 }))
    expect(expectOk(twoBaths(parts)).verdict).toBe('rotate')
  })

  it('what is left is said in each kind’s own unit', () => {
    const found = expectOk(twoBaths([rolls, { done: 0, capacity: 67 }]))
    expect(found.verdict).toBe('carry-on')
    expect(found.left).toEqual([expect.closeTo(13, 9), expect.closeTo(34.84, 9)])
  })

  it('a first bath that clears half as fast moves up before its count is used', () => {
    const clearing = expectOk(clearingVerdict(seconds(30), seconds(60)))
    expect(expectOk(twoBaths([rolls], clearing))).toMatchObject({ verdict: 'rotate', because: ['clearing'] })
  })

  it.each([
    { done: -1, capacity: 25 },
    { done: 1, capacity: 0 },
  ])('%j is refused', (one) => {
    expect(twoBaths([one]).ok).toBe(false)
  })
})

describe('the second of two fixing baths', () => {
  it('takes what film carries over from the first, on the average of its life', () => {
    // Roll by roll: the first bath's silver after each of 20 rolls in a litre, 20 mL of which the roll brings along.
    const brought = Array.from({ length: 20 }, (_, i) => (i + 0.5) * 0.02).reduce((sum, one) => sum + one, 0)
    expect(expectOk(secondBathShare(20, millilitres(20)))).toBeCloseTo(brought / 20, 12)
    expect(expectOk(secondBathShare(100, millilitres(500)))).toBe(1)
    expect(expectOk(secondBathShare(20, millilitres(0)))).toBe(0)
  })
  it('refuses what no bath is', () => {
    expect([secondBathShare(0, millilitres(20)).ok, secondBathShare(20, millilitres(501)).ok]).toEqual([false, false])
  })
})
