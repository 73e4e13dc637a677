import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { SeededRandom } from '../../kernel/index.js'
import { follow } from '../follow/follow.js'
import { score } from './bench.test-support.js'
import type { RunEvent } from './definition.js'
import { fold, type RunState } from './fold.js'
import { type Move, Play } from './history.test-support.js'
import { type Model, model } from './model.test-support.js'

/** The long run plays so many times the histories, and needs so many times the patience. */
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

/** Instants are whole milliseconds, and two ways of summing a dose meet there. */
const near = (a: number, b: number): boolean => Math.abs(a - b) < 0.01

/** What differs, in plain comparisons: with matchers ten thousand histories would not fit into the gate. */
function faults(state: RunState, now: number, expected: Model): string[] {
  const [tank] = follow(score, state, now * 1000).tanks
  if (tank === undefined) return ['no tank is followed']
  const counted = tank.readings.filter(({ counts }) => counts).map(({ id }) => id)
  const name = (kind: string, bath: number): string => `${kind} ${bath}`
  const pairs = [
    [told(state, 'pouredIn').join(), expected.in.join()],
    [told(state, 'pouredOut').join(), expected.out.join()],
    [counted.join(), expected.counted.join()],
    [
      tank.next === null ? '' : name(tank.next.job.kind, tank.next.job.index),
      expected.next === null ? '' : name(expected.next.kind, expected.next.bath),
    ],
  ]
  const late = !near((tank.pourOut?.at ?? 0) / 1000, expected.pourOut)
  const off = tank.next !== null && !near(tank.next.at / 1000, expected.next?.at ?? 0)
  return [
    ...pairs.flatMap(([got, right]) => (got === right ? [] : [`${got} in place of ${right}`])),
    ...(late ? ['another pour-out'] : []),
    ...(off ? ['another second for the next job'] : []),
  ]
}

describe('any history of a tank', () => {
  const met = { doubts: 0, readings: 0, undone: 0, next: 0 }

  it(
    `gives the state and the next job of the model, ${HISTORIES} times over`,
    () => {
      fc.assert(
        fc.property(moves, chance, fc.integer({ min: 0, max: 400 }), (played, seed, later) => {
          const history = new Play(played as readonly Move[])
          const state = fold(score, delivered(history.events, seed))
          if (state.doubts.length !== history.doubts)
            throw new Error(`${state.doubts.length} doubts in place of ${history.doubts}`)
          if (state.events.length !== history.events.length) throw new Error('an event is lost or doubled')
          const now = Math.max(...history.truths.map(({ at }) => at), 1_800_000_000) + later
          if (history.doubts > 0) {
            met.doubts += 1
            expect(follow(score, state, now * 1000)).toMatchObject({ tanks: [], next: null })
            return
          }
          const expected = model(history.truths, now)
          const wrong = faults(state, now, expected)
          if (wrong.length > 0) throw new Error(wrong.join('\n'))
          met.readings += expected.counted.length
          met.undone += state.events.filter(({ stands }) => !stands).length
          met.next += expected.next === null ? 0 : 1
        }),
        { seed: 20261, numRuns: HISTORIES },
      )
      // A fuzz that never met what it is for would prove nothing.
      for (const count of Object.values(met)) expect(count).toBeGreaterThan(300)
      // Some three seconds by itself; a busy machine takes several times that.
    },
    60_000 * fuzz,
  )
})
