import { describe, expect, it } from 'vitest'
import { celsius, expectOk, millilitres, type Result, seconds } from '../../kernel/index.js'
import { clearingVerdict, fixerLeft } from '../fixing/index.js'
import {
  afterChanges,
  afterDiffusion,
  afterFlow,
  estimateWash,
  firstFill,
  fixerByClearing,
  fixerByLeft,
  HALF_LIFE,
  HALF_LIVES,
  partAfterRinse,
  RESIDUE_LIMIT,
  SPOT_TESTS,
  type SpotReading,
  type WashAsked,
  type WashStep,
} from './index.js'

const change = (time = 180, volume = 300, moved = true): WashStep => ({
  kind: 'change',
  volume: millilitres(volume),
  time: seconds(time),
  moved,
})
const running = (time: number, perMinute = 1000, volume = 300): WashStep => ({
  kind: 'running',
  volume: millilitres(volume),
  time: seconds(time),
  perMinute: millilitres(perMinute),
})
const times = (count: number, step: WashStep): WashStep[] => Array.from({ length: count }, () => step)
/** One roll from a usable fixer of 60 g/L through seven changes of three minutes. */
const asked = (changed: Partial<WashAsked> = {}): WashAsked => ({
  after: { state: 'usable', by: 'clearing-test' },
  steps: times(7, change()),
  fixer: 60,
  rolls: 1,
  temperature: celsius(20),
  ...changed,
})
const estimate = (changed: Partial<WashAsked> = {}) => expectOk(estimateWash(asked(changed)))
const field = (result: Result<unknown>) => (result.ok ? 'answered' : [result.problem.code, result.problem.field])

describe('what water and diffusion leave', () => {
  it('each change leaves the carried part of the whole, and changes multiply', () => {
    expect(expectOk(afterChanges(0, 300, 10))).toBe(1)
    expect(expectOk(afterChanges(1, 290, 10))).toBeCloseTo(10 / 300, 12)
    expect(expectOk(afterChanges(3, 290, 10))).toBeCloseTo((10 / 300) ** 3, 15)
  })
  it('a tankful of running water leaves 1/e, a half-life a half', () => {
    expect(expectOk(afterFlow(600, 60, 600))).toBeCloseTo(Math.exp(-1), 12)
    expect(expectOk(afterDiffusion(90, 45))).toBe(0.25)
  })
  it('the slower of the published half-lives is the default', () => {
    expect(HALF_LIFE.seconds).toBe(Math.max(...HALF_LIVES.map(({ seconds: each }) => each)))
    expect(estimate().halfLife).toBe(HALF_LIFE.seconds)
  })
  it('outside their ranges they refuse and name the field', () => {
    expect(field(afterChanges(61, 300, 10))).toEqual(['washing.bad-value', 'changes'])
    expect(field(afterChanges(1, 49, 10))).toEqual(['washing.bad-value', 'volume'])
    expect(field(afterFlow(Number.NaN, 60, 300))).toEqual(['washing.bad-value', 'flow'])
    expect(field(afterDiffusion(60, 0))).toEqual(['washing.bad-value', 'halfLife'])
  })
})

describe('a rinse before the first fill', () => {
  it('film and walls rinsed leave a fifth of what is carried, walls alone two fifths', () => {
    expect(expectOk(partAfterRinse('nothing'))).toBe(1)
    expect(expectOk(partAfterRinse('walls'))).toBeCloseTo(0.4, 12)
    expect(expectOk(partAfterRinse('film-and-walls'))).toBeCloseTo(0.2, 12)
  })
  it('600 mg in half a litre are 1.2 g/L, rinsed 0.24: no fill removes half', () => {
    const part = expectOk(partAfterRinse('film-and-walls'))
    const found = expectOk(firstFill(600, 500, part))
    expect(found.gramsPerLitre).toBeCloseTo(1.2, 12)
    expect(found.rinsed).toBeCloseTo(0.24, 12)
  })
  it('halves what diffusion has to take, since the surface is half of what film holds', () => {
    const [dry, rinsed] = [estimate(), estimate({ rinse: 'film-and-walls' })]
    expect(rinsed.left.diffusion.milligramsPerRoll).toBeCloseTo(dry.left.diffusion.milligramsPerRoll / 2, 12)
    expect(rinsed.left.water.milligramsPerRoll).toBeCloseTo(dry.left.water.milligramsPerRoll / 5, 12)
    expect(rinsed.diffusionNeeds).toBeCloseTo(dry.diffusionNeeds - HALF_LIFE.seconds, 9)
  })
})

describe('the estimate', () => {
  it('the film keeps its part of the water it stands in', () => {
    const { left } = estimate({ steps: [change()] })
    expect(left.water.milligramsPerRoll).toBeCloseTo((60 * 10 * 4) / 310, 9)
  })
  it('the one that leaves more decides: few changes water, short ones diffusion', () => {
    const water = estimate({ steps: [change(3600)] })
    expect(water.slower).toBe('water')
    expect(water.perRoll).toBeCloseTo(water.left.water.milligramsPerRoll, 9)
    const diffusion = estimate({ steps: [running(300, 60_000)] })
    expect(diffusion.slower).toBe('diffusion')
    expect(diffusion.perRoll / diffusion.left.diffusion.milligramsPerRoll).toBeCloseTo(1, 1)
  })
  it('both together leave more than either: water fills up while the film still gives', () => {
    const { left, perRoll } = estimate({ steps: times(5, change(60)) })
    expect(perRoll).toBeGreaterThan(1.02 * Math.max(left.water.milligramsPerRoll, left.diffusion.milligramsPerRoll))
    // A trickle after a strong flow takes what the film gave late: neither alone would tell it.
    const late = estimate({ steps: [running(600, 3000), running(1200, 40)] })
    const { water, diffusion } = late.left
    expect(late.perRoll).toBeGreaterThan(20 * Math.max(water.milligramsPerRoll, diffusion.milligramsPerRoll))
  })
  it('film that holds nothing has nothing left', () => {
    expect(estimate({ wet: { emulsion: 0, surface: 0, walls: 6 } })).toMatchObject({ perRoll: 0, margin: 1e9 })
  })
  it('residue, milligrams a roll and margin are one figure in three ways', () => {
    const { residue, perRoll, margin } = estimate({ steps: times(3, change(60)) })
    expect(residue).toBeCloseTo(perRoll / 1000 / 0.0516128, 9)
    expect(margin).toBeCloseTo(RESIDUE_LIMIT.gramsPerM2 / residue, 9)
  })
  it('water that stands unmoved thins, and takes no time off diffusion', () => {
    const [moved, standing] = [estimate({ steps: [change()] }), estimate({ steps: [change(180, 300, false)] })]
    expect(standing.left.water).toEqual(moved.left.water)
    expect(standing.left.diffusion.part).toBe(1)
    expect(standing.time).toBe(180)
  })
  it('counts the water: a filling and what runs; running on in the same tank fills once', () => {
    expect(estimate().water).toBe(2100)
    expect(estimate({ steps: [running(600), running(600)] }).water).toBe(300 + 20_000)
  })
  it('cold, hardener and wash aid are factors on the half-life, each with its source', () => {
    const cold = estimate({ temperature: celsius(10), hardened: true, washAid: true })
    expect(cold.factors.map(({ name }) => name)).toEqual(['cold', 'hardener', 'wash-aid'])
    expect(cold.halfLife).toBeCloseTo(HALF_LIFE.seconds * 2 * 2 * (5 / 30), 9)
    expect(cold.factors.every(({ source }) => source.length > 10)).toBe(true)
    expect(estimate().factors).toEqual([])
  })
  it('by the time that diffusion needs it is at the limit', () => {
    const { diffusionNeeds } = estimate()
    const { left, margin } = estimate({ steps: [running(diffusionNeeds, 60_000, 1000)] })
    expect(left.diffusion.milligramsPerRoll / 1000 / 0.0516128).toBeCloseTo(RESIDUE_LIMIT.gramsPerM2, 9)
    // In a river, at the limit but for what the water itself still holds.
    expect(margin).toBeGreaterThan(0.98)
    expect(margin).toBeLessThanOrEqual(1)
  })
  it('refuses what no wash can be', () => {
    expect(field(estimateWash(asked({ steps: [] })))).toEqual(['washing.no-steps', undefined])
    expect(field(estimateWash(asked({ steps: times(61, change()) })))).toEqual(['washing.bad-value', 'steps'])
    expect(field(estimateWash(asked({ fixer: 0 })))).toEqual(['washing.bad-value', 'fixer'])
    expect(field(estimateWash(asked({ steps: [running(60, 60_001)] })))).toEqual(['washing.bad-value', 'perMinute'])
    expect(field(estimateWash(asked({ steps: times(60, running(86_400, 60_000)) })))).toEqual([
      'washing.bad-value',
      'steps',
    ])
  })
})

describe('the published least', () => {
  it('seven changes of three minutes are enough, six are not, however little they leave', () => {
    expect(estimate()).toMatchObject({ scheme: 'changes', floor: { met: true }, verdict: { says: 'enough' } })
    const six = estimate({ steps: times(6, change(210)) })
    expect(six.margin).toBeGreaterThan(1)
    expect(six).toMatchObject({ floor: { met: false }, verdict: { says: 'longer' } })
  })
  it('running water needs half an hour, five minutes after an aid', () => {
    const at = (time: number, washAid = false) => estimate({ steps: [running(time)], washAid })
    expect(at(1799).floor.met).toBe(false)
    expect(at(1800).floor.met).toBe(true)
    expect(at(299, true).floor.met).toBe(false)
    expect(at(300, true)).toMatchObject({ scheme: 'after-aid', floor: { met: true } })
  })
  it('enough changes make a scheme of changes, whatever runs besides', () => {
    expect(estimate({ steps: [...times(7, change()), running(60)] }).scheme).toBe('changes')
    expect(estimate({ steps: [...times(2, change()), running(60)] }).scheme).toBe('running')
  })
  it('is longer in the cold', () => {
    expect(estimate({ temperature: celsius(10) }).floor).toMatchObject({ seconds: 2400, met: false })
  })
})

describe('residual tests on one’s own film', () => {
  const reading = (
    passed: boolean,
    washed: Partial<SpotReading['washed']> = {},
    test: SpotReading['test'] = 'residual-hypo',
  ): SpotReading => ({
    test,
    passed,
    washed: {
      scheme: 'changes',
      time: seconds(600),
      changes: 5,
      temperature: celsius(20),
      waterPerRoll: millilitres(1500),
      ...washed,
    },
  })
  const five = times(5, change(120))
  it('a test that was passed lowers the floor to its own wash', () => {
    expect(estimate({ steps: five }).verdict.says).toBe('longer')
    const allowed = estimate({ steps: five, readings: [reading(true)] })
    expect(allowed.floor).toMatchObject({ seconds: 600, changes: 5, met: true, byOwnTest: true })
    expect(allowed.verdict.says).toBe('enough')
  })
  it('speaks only for a wash of its kind that is no shorter, colder or thriftier, and for film no more hardened', () => {
    const others = [
      reading(true, { time: seconds(601) }),
      reading(true, { changes: 6 }),
      reading(true, { scheme: 'running' }),
      reading(true, { temperature: celsius(21) }),
      reading(true, { waterPerRoll: millilitres(1501) }),
    ]
    for (const one of others) expect(estimate({ steps: five, readings: [one] }).floor.byOwnTest).toBe(false)
    expect(estimate({ steps: five, readings: [reading(true)], hardened: true }).floor.byOwnTest).toBe(false)
  })
  it('a failure after as much washing outweighs it, one after less does not', () => {
    const failed = reading(false, { time: seconds(700) })
    expect(estimate({ steps: five, readings: [reading(true), failed] }).floor.byOwnTest).toBe(false)
    const less = reading(false, { time: seconds(500) })
    expect(estimate({ steps: five, readings: [reading(true), less] }).floor.byOwnTest).toBe(true)
  })
  it('silver found in the film leaves nothing to judge', () => {
    expect(estimate({ readings: [reading(false, {}, 'residual-silver')] }).verdict).toEqual({
      says: 'cannot-be-judged',
      because: 'silver-left-in-film',
    })
    expect(estimate({ readings: [reading(true, {}, 'residual-silver')] }).verdict.says).toBe('enough')
  })
  it('the sulfide never meets acid', () => {
    const sulfide = SPOT_TESTS.find(({ id }) => id === 'residual-silver')
    expect(sulfide?.cautions).toContain('never-meets-acid-hydrogen-sulfide')
  })
})

describe('no verdict without a fixer verdict', () => {
  const bath = (rolls: number, volume = 600, rollsPerLitre = 20) =>
    expectOk(
      fixerLeft({
        kind: 'ammonium-thiosulfate',
        volume: millilitres(volume),
        rollsPerLitre,
        fixed: [{ rolls, family: 'ordinary' }],
      }),
    )
  it('the same wash after a fresh and after a loaded fixer: the second cannot be judged', () => {
    const fresh = estimate({ after: fixerByLeft(bath(3)) })
    const loaded = estimate({ after: fixerByLeft(bath(13)) })
    expect(loaded.residue).toBe(fresh.residue)
    expect(fresh.verdict).toEqual({ says: 'enough' })
    expect(loaded.verdict).toEqual({ says: 'cannot-be-judged', because: 'count-used' })
  })
  it('a fixer that nobody tested or counted leaves nothing to judge', () => {
    expect(estimate({ after: { state: 'unknown' } }).verdict).toEqual({
      says: 'cannot-be-judged',
      because: 'fixer-unknown',
    })
  })
  it('a clearing time that has doubled is a finished fixer', () => {
    const at = (now: number) => fixerByClearing(expectOk(clearingVerdict(seconds(35), seconds(now))))
    expect(at(69)).toEqual({ state: 'usable', by: 'clearing-test' })
    expect(at(70)).toEqual({ state: 'finished', because: 'clearing-doubled' })
  })
  it('the roll that fills the count was still fixed, and silver may end a bath before its count', () => {
    expect(fixerByLeft(bath(12))).toEqual({ state: 'usable', by: 'count' })
    expect(fixerByLeft(bath(40, 1000, 100))).toEqual({ state: 'finished', because: 'silver-loaded' })
  })
  it('tests by whose trend clearing has doubled finish it', () => {
    const tests = { fresh: seconds(30), made: [{ rolls: 8, clearing: seconds(66) }] }
    const fixed = [{ rolls: 8, family: 'ordinary' as const }]
    const volume = millilitres(1000)
    const left = expectOk(fixerLeft({ kind: 'ammonium-thiosulfate', volume, rollsPerLitre: 20, fixed, tests }))
    expect(fixerByLeft(left)).toEqual({ state: 'finished', because: 'clearing-doubled' })
  })
})
