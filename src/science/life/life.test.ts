import { describe, expect, it } from 'vitest'
import { expectOk, millilitres, type Result } from '../../kernel/index.js'
import {
  afterRolls,
  ageOf,
  balanceOf,
  CARRIED_ALKALI,
  INDICATOR,
  KEEPING,
  KEEPING_KINDS,
  neutralisedAt,
  plateau,
  type Replenished,
  replenisherFor,
  rollsToPlateau,
  type StopInUse,
  stopCapacity,
  stopFor,
  stopMolarity,
} from './index.js'

const mL = millilitres
const codeOf = (result: Result<unknown>) => (result.ok ? result.value : result.problem.code)

describe('age', () => {
  const lives = { full: 100, 'half-full': 40, tray: 1, tank: null }
  it('adds up as parts of each state’s life', () => {
    const age = expectOk(
      ageOf(
        [
          { state: 'full', days: 50 },
          { state: 'half-full', days: 10 },
        ],
        lives,
      ),
    )
    expect(age).toMatchObject({ used: 0.75, verdict: 'keeps' })
    expect(age.stretches.map(({ used }) => used)).toEqual([0.5, 0.25])
  })

  it('days left are those of the state it stands in now', () => {
    const used = { state: 'full', days: 50 } as const
    const now = (state: 'full' | 'half-full') => expectOk(ageOf([used, { state, days: 0 }], lives)).daysLeft
    expect([now('full'), now('half-full')]).toEqual([50, 20])
  })

  it('at exactly 1 it is past, also when ten tenths add up to less', () => {
    const tenths = Array.from({ length: 10 }, () => ({ state: 'full', days: 10 }) as const)
    expect(expectOk(ageOf(tenths, lives))).toMatchObject({ verdict: 'past', daysLeft: 0 })
    expect(expectOk(ageOf([{ state: 'full', days: 99.9 }], lives)).verdict).toBe('keeps')
  })

  it('every bath has a life in a full bottle, as a default that says where it is from', () => {
    for (const kind of KEEPING_KINDS) {
      const { days, origin } = KEEPING[kind]
      expect(expectOk(ageOf([{ state: 'full', days: days.full as number }], days)).used).toBe(1)
      expect(origin).toBe('practice')
    }
  })

  it.each([
    ['a state without a life', [{ state: 'tank', days: 1 }], 'life.state-unknown'],
    ['no stretch at all', [], 'life.bad-value'],
    ['days below none', [{ state: 'full', days: -1 }], 'life.bad-value'],
    ['days of no number', [{ state: 'full', days: Number.NaN }], 'life.bad-value'],
  ] as const)('is refused: %s', (_, stretches, code) => {
    expect(codeOf(ageOf(stretches, lives))).toBe(code)
  })

  it('a life of nothing is refused', () => {
    expect(codeOf(ageOf([{ state: 'full', days: 1 }], { ...lives, full: 0 }))).toBe('life.bad-value')
  })
})

describe('a replenished bath', () => {
  /** Bromide: a roll gives 60 mg, 50 mL of a litre are replaced. */
  const bromide: Replenished = { volume: mL(1000), rate: mL(50), perRoll: 0.06, replenisher: 0, start: 0 }
  /** Agent: a roll uses 0.1 g, the replenisher has 4 g/L. */
  const agent: Replenished = { volume: mL(1000), rate: mL(50), perRoll: -0.1, replenisher: 4, start: 5 }

  it('one roll: film first, then what is let off takes its part along', () => {
    expect(expectOk(afterRolls(bromide, 1))).toBeCloseTo(0.06 * 0.95, 12)
    expect(expectOk(afterRolls(bromide, 0))).toBe(0)
  })

  it('settles where a roll gives what topping up takes', () => {
    const { beforeTopping, afterTopping } = expectOk(plateau(bromide))
    expect(beforeTopping).toBeCloseTo(1.2, 12)
    expect(beforeTopping - afterTopping).toBeCloseTo(0.06, 12)
    expect(expectOk(afterRolls({ ...bromide, start: afterTopping }, 1))).toBeCloseTo(afterTopping, 12)
    expect(expectOk(afterRolls(bromide, 100_000))).toBeCloseTo(afterTopping, 12)
  })

  it('what is used up is lowest before topping up', () => {
    const { beforeTopping, afterTopping } = expectOk(plateau(agent))
    expect(beforeTopping).toBeCloseTo(2, 12)
    expect(afterTopping).toBeGreaterThan(beforeTopping)
  })

  it('a replenisher made for an aim holds the bath there before topping up', () => {
    const strength = expectOk(replenisherFor(2, 0.1, mL(50)))
    expect(strength).toBeCloseTo(4, 12)
    expect(expectOk(plateau({ ...agent, replenisher: strength })).beforeTopping).toBeCloseTo(2, 12)
  })

  it('the rolls to a tolerance leave that part of the way', () => {
    const end = expectOk(plateau(bromide)).afterTopping
    for (const part of [0.5, 0.05, 0.01]) {
      const rolls = expectOk(rollsToPlateau(bromide, part))
      expect((end - expectOk(afterRolls(bromide, Math.floor(rolls)))) / end).toBeGreaterThanOrEqual(part)
      expect((end - expectOk(afterRolls(bromide, Math.ceil(rolls)))) / end).toBeLessThanOrEqual(part)
    }
    expect(expectOk(rollsToPlateau({ volume: mL(1000), rate: mL(1000) }))).toBe(1)
  })

  it('is refused where film would use up more than is there', () => {
    const weak = { ...agent, replenisher: 1, start: 1 }
    expect(codeOf(plateau(weak))).toBe('life.never-settles')
    expect(expectOk(afterRolls(weak, 5))).toBeLessThan(1)
    expect(codeOf(afterRolls(weak, 30))).toBe('life.used-up')
    expect(codeOf(afterRolls({ ...agent, start: 0.05 }, 1))).toBe('life.used-up')
  })

  it('topped up above none, but bare just before it, is refused too', () => {
    const bare = { ...agent, replenisher: 1.95 }
    expect(codeOf(plateau(bare))).toBe('life.never-settles')
  })

  it.each([
    ['more replaced than the bath holds', { rate: mL(1001) }],
    ['nothing replaced', { rate: mL(0) }],
    ['a bath of a thimble', { volume: mL(49), rate: mL(5) }],
    ['a start of no number', { start: Number.NaN }],
    ['a replenisher below none', { replenisher: -1 }],
    ['a roll of a kilogram', { perRoll: 1000 }],
  ])('is refused: %s', (_, changed) => {
    expect(codeOf(plateau({ ...bromide, ...changed }))).toBe('life.bad-value')
    expect(codeOf(afterRolls({ ...bromide, ...changed }, 1))).toBe('life.bad-value')
  })

  it('half rolls, and a tolerance of nothing, are refused', () => {
    expect(codeOf(afterRolls(bromide, 1.5))).toBe('life.not-whole')
    expect(codeOf(rollsToPlateau(bromide, 0))).toBe('life.bad-value')
  })
})

describe('the book of a bath', () => {
  it('start, added, discarded, carried out', () => {
    const book = [{ added: mL(70), discarded: mL(50), carriedOut: mL(20) }, { carriedOut: mL(40) }, { added: mL(10) }]
    expect(expectOk(balanceOf(mL(1000), book))).toEqual({ volume: 970, added: 80, discarded: 50, carriedOut: 60 })
  })
  it('nothing written down changes nothing', () => {
    expect(expectOk(balanceOf(mL(500), []))).toEqual({ volume: 500, added: 0, discarded: 0, carriedOut: 0 })
  })
  it('a book that empties the bath more than it held names the entry', () => {
    const found = balanceOf(mL(100), [{ added: mL(20) }, { discarded: mL(150) }])
    expect(found.ok ? found.value : found.problem.sentence).toMatch(/entry 2 .* -30 mL/)
  })
  it('a negative volume is refused, so nothing is added by carrying out', () => {
    expect(codeOf(balanceOf(mL(100), [{ carriedOut: -5 as never }]))).toBe('life.bad-value')
  })
})

describe('a stop bath', () => {
  const one = expectOk(stopMolarity(1))
  const bath = (changed: Partial<StopInUse> = {}): StopInUse => ({ volume: mL(1000), molarity: one, ...changed })

  it('half of an acid is neutralised at its pKa', () => {
    expect(expectOk(neutralisedAt(4.756))).toBeCloseTo(0.5, 12)
    expect(expectOk(neutralisedAt(14, 'citric'))).toBeCloseTo(1, 6)
    expect(codeOf(neutralisedAt(15))).toBe('life.bad-value')
  })

  it('carries as many rolls as the alkali of one goes into what it takes', () => {
    const found = expectOk(stopCapacity(bath()))
    expect(found.takes).toBeCloseTo(one * expectOk(neutralisedAt(INDICATOR.yellowBelow)), 12)
    expect(found.byAcid * CARRIED_ALKALI.alkali * 0.02).toBeCloseTo(found.takes, 12)
    expect(found.toPurple).toBeGreaterThan(found.byAcid)
    expect(found).toMatchObject({ decides: 'acid', byPublished: null, part: expect.closeTo(0.735, 3) })
  })

  it('a lower published count rules, a higher one does not', () => {
    expect(expectOk(stopCapacity(bath({ published: 12 })))).toMatchObject({ decides: 'published', carries: 12 })
    expect(expectOk(stopCapacity(bath({ published: 60 }))).decides).toBe('acid')
    expect(expectOk(stopCapacity(bath({ published: 12, volume: mL(500), rolls: 4 }))).left).toBe(2)
  })

  it('what went through it is taken off, and never leaves fewer than none', () => {
    const [fresh, used, dead] = [0, 10, 80].map((rolls) => expectOk(stopCapacity(bath({ rolls }))))
    expect((fresh?.left ?? 0) - (used?.left ?? 0)).toBeCloseTo(10, 9)
    expect(dead?.left).toBe(0)
  })

  it('citric acid takes up more than one alkali each', () => {
    const same = { molarity: 0.1 }
    const [acetic, citric] = [bath(same), bath({ ...same, acid: 'citric' })].map((one) => expectOk(stopCapacity(one)))
    expect((citric?.takes ?? 0) / (acetic?.takes ?? 1)).toBeGreaterThan(2)
  })

  it.each([
    ['no acid', { molarity: 0 }],
    ['a thimble', { volume: mL(10) }],
    ['rolls of no number', { rolls: Number.NaN }],
    ['carrying nothing', { carried: { ...CARRIED_ALKALI, volume: mL(0) } }],
    ['alkali of none', { carried: { ...CARRIED_ALKALI, alkali: 0 } }],
    ['a published count of none', { published: 0 }],
  ])('is refused: %s', (_, changed) => {
    expect(codeOf(stopCapacity(bath(changed)))).toBe('life.bad-value')
  })

  it('water stands in for it with every reason named', () => {
    expect(stopFor({ developer: 'ordinary', fixer: 'acid' })).toEqual({ stop: 'acid', reasons: [] })
    expect(stopFor({ developer: 'staining', fixer: 'alkaline' })).toEqual({
      stop: 'water',
      reasons: ['alkaline-fixer', 'staining-developer'],
    })
    expect(stopFor({ developer: 'strong-carbonate', fixer: 'acid' }).reasons).toEqual(['strong-carbonate'])
  })
})
