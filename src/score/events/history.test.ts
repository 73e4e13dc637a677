import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { SeededRandom } from '../../kernel/index.js'
import { follow } from '../follow/follow.js'
import { score } from './bench.test-support.js'
import type { RunEvent } from './definition.js'
import { fold, type RunState } from './fold.js'
import { type Move, Play } from './history.test-support.js'
import { type Model, model } from './model.test-support.js'

const fuzz = Number((globalThis as { process?: { env: Record<string, string> } }).process?.env['WETSIDE_FUZZ'] ?? 1)
const HISTORIES = 10_000

const moves = fc.array(
  fc.tuple(
    fc.integer({ min: 0, max: 15 }),
    fc.integer({ min: 0, max: 1 }),
    fc.integer({ min: 0, max: 999 }),
    fc.integer({ min: 0, max: 999 }),
  ),
  { minLength: 1, maxLength: 16 },
)
const chance = fc.integer({ min: 0, max: 2 ** 31 })

/** The events as a network may deliver them: any order, some twice. */
function delivered(events: readonly RunEvent[], seed: number): RunEvent[] {
  const random = new SeededRandom(seed)
  const some = events.filter(() => random.unit() < 0.3)
  return [...events, ...some]
    .map((event) => ({ event, key: random.unit() }))
    .sort((a, b) => a.key - b.key)
    .map(({ event }) => event)
}

const told = (state: RunState, field: 'pouredIn' | 'pouredOut') =>
  [0, 1, 2, 3].map((bath) => {
    const placed = state.tanks[0]?.steps.get(bath)?.[field] ?? null
    return placed === null ? null : placed.at / 1000
  })

function compare(history: Play, state: RunState, now: number, expected: Model): void {
  expect(told(state, 'pouredIn')).toEqual(expected.in)
  expect(told(state, 'pouredOut')).toEqual(expected.out)
  const following = follow(score, state, now * 1000)
  const [tank] = following.tanks
  expect(tank?.readings.filter(({ counts }) => counts).map(({ id }) => id)).toEqual(expected.counted)
  expect(Math.abs((tank?.pourOut?.at ?? 0) / 1000 - expected.pourOut)).toBeLessThan(0.01)
  const next = following.next?.job
  if (expected.next === null || next === undefined) expect(next?.job.id ?? null).toBe(expected.next)
  else {
    expect([next.job.kind, next.job.index]).toEqual([expected.next.kind, expected.next.bath])
    expect(Math.abs(next.at / 1000 - expected.next.at)).toBeLessThan(0.01)
  }
  expect(state.events).toHaveLength(history.events.length)
}

describe('any history of a tank', () => {
  const met = { doubts: 0, readings: 0, undone: 0, next: 0 }

  it(`gives the state and the next job of the model, ${HISTORIES} times over`, () => {
    fc.assert(
      fc.property(moves, chance, fc.integer({ min: 0, max: 400 }), (played, seed, later) => {
        const history = new Play(played as readonly Move[])
        const state = fold(score, delivered(history.events, seed))
        expect(state.doubts).toHaveLength(history.doubts)
        const now = Math.max(...history.truths.map(({ at }) => at), 1_800_000_000) + later
        if (history.doubts > 0) {
          met.doubts += 1
          expect(follow(score, state, now * 1000)).toMatchObject({ tanks: [], next: null })
          return
        }
        const expected = model(history.truths, now)
        compare(history, state, now, expected)
        met.readings += expected.counted.length
        met.undone += state.events.filter(({ stands }) => !stands).length
        met.next += expected.next === null ? 0 : 1
      }),
      { seed: 20261, numRuns: HISTORIES * fuzz },
    )
    // A fuzz that never met what it is for would prove nothing.
    for (const count of Object.values(met)) expect(count).toBeGreaterThan(300)
  })
})
