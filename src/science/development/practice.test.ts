import { describe, expect, it } from 'vitest'
import { celsius, expectOk, seconds } from '../../kernel/index.js'
import { agitationFactor, defineBasis, developingTime, pushFactor, repeatUseFactor } from './index.js'

const basis = expectOk(defineBasis({ kind: 'ordinary', points: [{ temperature: celsius(20), time: seconds(600) }] }))
const at20 = (...question: [Parameters<typeof developingTime>[2]]) => developingTime(basis, celsius(20), ...question)

describe('practised factors', () => {
  it('push and pull by whole stops, with the range that is practised', () => {
    const one = expectOk(pushFactor({ ofTime: 400, exposedAt: 800 }))
    expect([one.low, one.high, one.modifier.origin]).toEqual([1.35, 1.5, 'practice'])
    expect(expectOk(pushFactor({ ofTime: 400, exposedAt: 1600 })).high).toBe(2)
    expect(expectOk(pushFactor({ ofTime: 400, exposedAt: 200 })).low).toBe(0.7)
    // 320 to 640 is a stop by name, 125 to 64 nearly one.
    expect(expectOk(pushFactor({ ofTime: 125, exposedAt: 64 })).modifier.factor).toBeLessThan(1)
  })

  it('refuses a push that nobody practises', () => {
    for (const exposedAt of [3200, 560, 100, 0, Number.NaN]) {
      const refused = pushFactor({ ofTime: 400, exposedAt })
      expect(refused.ok ? '' : refused.problem.code).toBe('times.no-practised-push')
    }
  })

  it('repeat use counts the films before this one', () => {
    expect(expectOk(repeatUseFactor(1)).modifier.factor).toBe(1)
    const third = expectOk(repeatUseFactor(3))
    expect(third.low).toBeCloseTo(1.2, 12)
    expect(third.high).toBeCloseTo(1.3, 12)
    for (const use of [0, 1.5, 9, Number.NaN]) expect(repeatUseFactor(use).ok).toBe(false)
  })

  it('are kept and shown in the order given', () => {
    const modifiers = [agitationFactor('continuous').modifier, expectOk(repeatUseFactor(2)).modifier]
    const answer = expectOk(at20({ modifiers }))
    expect(answer.factors.map(({ name }) => name)).toEqual(['temperature', 'agitation', 'repeat-use'])
    expect(answer.time).toBeCloseTo(600 * 0.85 * 1.125, 6)
  })
})

describe('a push', () => {
  const push = { name: 'push-pull', factor: 1.4, origin: 'practice' } as const

  it('by factor on top of the time for that very index is refused', () => {
    const twice = at20({ modifiers: [push], indexes: { ofTime: 800, exposedAt: 800 } })
    expect(twice.ok ? '' : twice.problem.code).toBe('times.push-twice')
    const same = pushFactor({ ofTime: 800, exposedAt: 800 })
    expect(same.ok ? '' : same.problem.code).toBe('times.push-twice')
  })

  it('by factor from the normal time is served, and without a factor the time of that index is', () => {
    expect(expectOk(at20({ modifiers: [push], indexes: { ofTime: 400, exposedAt: 800 } })).time).toBeCloseTo(840, 6)
    expect(expectOk(at20({ indexes: { ofTime: 800, exposedAt: 800 } })).time).toBeCloseTo(600, 6)
  })

  it('by two factors is refused', () => {
    const two = at20({ modifiers: [push, push] })
    expect(two.ok ? '' : two.problem.code).toBe('times.two-pushes')
  })
})
