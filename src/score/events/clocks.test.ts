import { describe, expect, it } from 'vitest'
import { candidatesOf } from '../follow/candidates.js'
import { follow } from '../follow/follow.js'
import { score } from './bench.test-support.js'
import type { EventStamp, Happening, RunEvent } from './definition.js'
import { fold } from './fold.js'
import { nowOf } from './now.js'

const START = 1_800_000_000_000
const HOUR = 3_600_000

const event = (id: string, stamp: Partial<EventStamp>, happening: Happening): RunEvent => ({
  id,
  device: 'phone',
  life: 'one',
  monotonicMs: 0,
  wallMs: START,
  serverOffsetMs: null,
  tank: 'A',
  bath: 0,
  actor: 'someone',
  ...stamp,
  ...happening,
})

const pour = event('a', { monotonicMs: 1000, wallMs: START }, { kind: 'poured-in' })

/** A page that came back 5 s after the last kept moment, 100 s after the pour, its wall clock moved by `moved`. */
function reloaded(moved: number, serverOffsetMs: number | null = null): RunEvent {
  const previous = { life: 'one', monotonicMs: 101_000, wallMs: START + 100_000, serverOffsetMs: null }
  const wallMs = START + 105_000 + moved
  return event('b', { life: 'two', monotonicMs: 300, wallMs, serverOffsetMs }, { kind: 'resumed', previous })
}
/** The device ten seconds after it came back. */
const later = (moved: number) => ({
  device: 'phone',
  life: 'two',
  monotonicMs: 10_300,
  wallMs: START + 115_000 + moved,
  serverOffsetMs: null,
})

describe('the time of a device', () => {
  it('goes on by the monotonic clock when the wall clock is moved in the middle of a life', () => {
    const clocks = { device: 'phone', life: 'one', monotonicMs: 61_000, wallMs: START + HOUR, serverOffsetMs: null }
    expect(nowOf([pour], clocks)).toEqual({ kind: 'sure', at: START + 60_000 })
  })

  it('goes on by the wall clock over an ordinary reload', () => {
    expect(nowOf([pour, reloaded(0)], later(0))).toEqual({ kind: 'sure', at: START + 115_000 })
  })

  it.each([HOUR, -HOUR, 60_000, -10_000])('is in doubt after a reload with the clock moved by %d ms', (moved) => {
    const events = [pour, reloaded(moved)]
    const now = nowOf(events, later(moved))
    const doubt = { device: 'phone', life: 'two', byWall: START + 105_000 + moved, continued: START + 100_000 }
    expect(now).toEqual({ kind: 'in-doubt', doubt })
    expect(fold(score, events).doubts).toEqual([doubt])
    expect(follow(score, fold(score, events), START)).toEqual({ tanks: [], doubts: [doubt], next: null })
  })

  it('shows what either answer would mean, and takes the one that is chosen until that is undone', () => {
    const events = [pour, reloaded(HOUR)]
    const [doubt] = fold(score, events).doubts
    if (doubt === undefined) throw new Error('There should be a doubt.')
    const candidates = candidatesOf(score, events, doubt, later(HOUR))
    expect(candidates.continued?.now).toBe(START + 110_000)
    expect(candidates['by-wall']?.now).toBe(START + 115_000 + HOUR)
    expect(candidates.continued?.following.tanks[0]?.timeLeft).toBeCloseTo(360, 1)
    expect(candidates['by-wall']?.following.tanks[0]?.timeLeft).toBeCloseTo(355 - 3600, 1)
    const chosen = event(
      'c',
      { life: 'two', monotonicMs: 11_000 },
      { kind: 'clock-settled', life: 'two', choice: 'continued' },
    )
    expect(nowOf([...events, chosen], later(HOUR))).toEqual({ kind: 'sure', at: START + 110_000 })
    const undone = event('d', { life: 'two', monotonicMs: 12_000 }, { kind: 'retracted', of: 'c' })
    expect(nowOf([...events, chosen, undone], later(HOUR)).kind).toBe('in-doubt')
  })

  it('is sure as soon as the server is reached, whatever the wall clock says', () => {
    const known = START + 105_000 - 300
    expect(nowOf([pour, reloaded(HOUR, known)], { ...later(HOUR), serverOffsetMs: known })).toEqual({
      kind: 'sure',
      at: known + 10_300,
    })
  })

  it('stands aside for a moment that a person states, as on a run typed in from paper', () => {
    const typed = event('z', { statedMs: START - HOUR, monotonicMs: 5 }, { kind: 'poured-in' })
    expect(fold(score, [typed]).tanks[0]?.steps.get(0)?.pouredIn?.at).toBe(START - HOUR)
  })
})

describe('undo', () => {
  const undo = (id: string, of: string) => event(id, { monotonicMs: 2000 }, { kind: 'retracted', of })
  const standing = (...events: RunEvent[]) =>
    fold(score, events)
      .events.filter(({ stands }) => stands)
      .map(({ event: { id } }) => id)

  it('takes back, and is taken back', () => {
    expect(standing(pour, undo('b', 'a'))).toEqual(['b'])
    expect(standing(pour, undo('b', 'a'), undo('c', 'b'))).toEqual(['a', 'c'])
    expect(standing(pour, undo('b', 'a'), undo('c', 'b'), undo('d', 'c'))).toEqual(['b', 'd'])
  })

  it('comes to an end in any circle, the same whichever way it is told', () => {
    const circle = [undo('b', 'c'), undo('c', 'b'), undo('d', 'd')]
    expect(standing(pour, ...circle)).toEqual(standing(pour, ...circle.toReversed()))
    expect(standing(pour, ...circle)).toContain('d')
  })

  it('keeps an event about a tank or step that the score lacks, and does not follow it', () => {
    const stranger = event('s', { bath: 9 }, { kind: 'poured-in' })
    const state = fold(score, [pour, stranger])
    expect(state.strangers.map(({ event: { id } }) => id)).toEqual(['s'])
    expect(state.tanks[0]?.steps.size).toBe(1)
  })
})
