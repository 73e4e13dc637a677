import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { follow } from '../follow/follow.js'
import { score } from './bench.test-support.js'
import type { RunEvent } from './definition.js'
import { fold } from './fold.js'
import { type Move, Play } from './history.test-support.js'

const moves = fc.array(
  fc.tuple(
    fc.integer({ min: 0, max: 15 }),
    fc.integer({ min: 0, max: 1 }),
    fc.integer({ min: 0, max: 999 }),
    fc.integer({ min: 0, max: 999 }),
  ),
  { minLength: 1, maxLength: 12 },
)
const settings = { seed: 20261, numRuns: 400 }

/** Everything a person would be shown, as text. */
function shown(events: readonly RunEvent[], now: number, taken: ReadonlySet<string> = new Set()): string {
  const state = fold(score, events)
  const { tanks, next, doubts } = follow(score, state, now)
  const kept = state.events
    .filter(({ event }) => !taken.has(event.id))
    .map(({ event, at, stands }) => [event.id, at, stands])
  const told = tanks.map(({ deviations, ...rest }) => ({
    ...rest,
    deviations: deviations.filter(({ code }) => code !== 'taken-back'),
  }))
  return JSON.stringify([kept, told, next, doubts])
}
const end = (history: Play): number => 1_800_000_000_000 + Math.round(history.end * 1000) + 5000

describe('a set of events', () => {
  it('shows the same in any order and with any of them twice', () => {
    fc.assert(
      fc.property(moves, fc.infiniteStream(fc.nat()), (played, chance) => {
        const history = new Play(played as readonly Move[])
        const keyed = [...history.events, ...history.events].map((event) => ({
          event,
          key: chance.next().value as number,
        }))
        const shuffled = keyed.sort((a, b) => a.key - b.key).map(({ event }) => event)
        expect(shown(shuffled, end(history))).toBe(shown(history.events, end(history)))
      }),
      settings,
    )
  })

  it('shows exactly what it did once something has been written and taken back', () => {
    const kinds = [
      { kind: 'poured-in', bath: 0 },
      { kind: 'poured-out', bath: 1 },
      { kind: 'skipped', bath: 2, reason: 'x' },
      { kind: 'mishap', bath: 0, mishap: 'fixer-first' },
      { kind: 'mishap', bath: 1, mishap: 'stop-skipped' },
      { kind: 'abandoned', bath: null, reason: 'x' },
      { kind: 'reading', bath: 0, temperature: 20.7, confirmed: true },
    ] as const
    let seen = 0
    fc.assert(
      fc.property(moves, fc.nat({ max: kinds.length - 1 }), (played, which) => {
        const history = new Play(played as readonly Move[])
        const stamp = { ...(history.events[0] as RunEvent), monotonicMs: Math.round(history.end * 500) }
        const wrong = { ...stamp, ...kinds[which], id: 'x1' } as RunEvent
        const undo = { ...stamp, kind: 'retracted', of: 'x1', bath: null, id: 'x2' } as RunEvent
        const [before, now] = [shown(history.events, end(history)), end(history)]
        seen += shown([...history.events, wrong], now, new Set(['x1'])) === before ? 0 : 1
        expect(shown([...history.events, wrong, undo], now, new Set(['x1', 'x2']))).toBe(before)
      }),
      settings,
    )
    expect(seen).toBeGreaterThan(100)
  })
})
