import { describe, expect, it } from 'vitest'
import { expectOk } from '../kernel/index.js'
import type { IntegerProgram } from '../planning/index.js'
import { integerSolver } from './index.js'
import { lpText } from './lp-text.js'

// The thread runs built code; the gate builds before it tests.
const solver = integerSolver(new URL('../../dist/solver/worker.js', import.meta.url))

/** Five rolls of two sizes into tanks of 500 mL: how few tanks? By hand: 3 (500 = 290 + 200 twice, and one left). */
const VOLUMES = { a: 290, b: 290, c: 290, d: 200, e: 200 }
function tanks(capacity: number, most: number): IntegerProgram {
  const numbers = Array.from({ length: most }, (_, t) => t)
  const place = (roll: string, t: number) => `${roll} in ${t}`
  const rolls = Object.keys(VOLUMES)
  const once = { low: 0, high: 1 }
  return {
    minimise: Object.fromEntries(numbers.map((t) => [`tank ${t}`, 1])),
    variables: Object.fromEntries([
      ...numbers.map((t) => [`tank ${t}`, once]),
      ...rolls.flatMap((roll) => numbers.map((t) => [place(roll, t), once])),
    ]),
    limits: [
      ...rolls.map((roll) => ({
        sum: Object.fromEntries(numbers.map((t) => [place(roll, t), 1])),
        is: 'exactly' as const,
        bound: 1,
      })),
      ...numbers.map((t) => ({
        sum: {
          ...Object.fromEntries(rolls.map((roll) => [place(roll, t), VOLUMES[roll as 'a']])),
          [`tank ${t}`]: -capacity,
        },
        is: 'at most' as const,
        bound: 0,
      })),
    ],
  }
}

describe('the integer solver', () => {
  it('packs five rolls into three tanks and says it is the best', async () => {
    const solution = expectOk(await solver.solve(tanks(500, 5), 10_000))
    expect(solution).toMatchObject({ stop: 'optimal', objective: 3 })
    for (const t of [0, 1, 2, 3, 4]) {
      const held = Object.entries(VOLUMES).filter(([roll]) => solution.values[`${roll} in ${t}`] === 1)
      expect(held.reduce((sum, [, volume]) => sum + volume, 0)).toBeLessThanOrEqual(500)
    }
  })

  it('says that an impossible program has no solution', async () => {
    expect(await solver.solve(tanks(500, 2), 10_000)).toMatchObject({
      ok: false,
      problem: { code: 'loads.impossible' },
    })
  })

  it('is cancelled before and while it works', async () => {
    const early = new AbortController()
    early.abort()
    expect(await solver.solve(tanks(500, 5), 10_000, early.signal)).toMatchObject({
      problem: { code: 'loads.cancelled' },
    })
    const late = new AbortController()
    const running = solver.solve(tanks(500, 9), 10_000, late.signal)
    late.abort()
    expect(await running).toMatchObject({ problem: { code: 'loads.cancelled' } })
  })

  it('refuses a program that names what it does not declare', () => {
    expect(() => lpText({ minimise: { ghost: 1 }, limits: [], variables: {} })).toThrow('“ghost”')
  })
})
