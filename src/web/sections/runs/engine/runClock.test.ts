import { expect, it } from 'vitest'
import { RunClock } from './runClock.js'

const PLANNED = Date.UTC(2026, 2, 1, 12)

it('a run at true speed reads the clocks as they are', () => {
  const clock = new RunClock({ monotonic: () => 1234.6, wall: () => PLANNED + 5000 }, 1, PLANNED)
  expect(clock.read()).toMatchObject({ monotonicMs: 1235, wallMs: PLANNED + 5000, serverOffsetMs: null })
  clock.metServer(PLANNED + 3000)
  expect(clock.read().serverOffsetMs).toBe(PLANNED + 3000)
})

it('practice goes as many times as fast, alike by every clock, on every device', () => {
  const [sink, desk] = [
    new RunClock({ monotonic: () => 2000, wall: () => PLANNED + 60_000 }, 20, PLANNED),
    new RunClock({ monotonic: () => 777_000, wall: () => PLANNED - 9_999_999 }, 20, PLANNED),
  ]
  sink.metServer(PLANNED + 58_000)
  desk.metServer(PLANNED + 60_000 - 777_000)
  const instants = [sink, desk].map((clock) => {
    const { monotonicMs, serverOffsetMs } = clock.read()
    return monotonicMs + (serverOffsetMs ?? 0)
  })
  expect(instants).toEqual([PLANNED + 20 * 60_000, PLANNED + 20 * 60_000])
  expect(sink.read().wallMs).toBe(PLANNED + 20 * 60_000)
})

it('keeps to the first answer of the server, since later ones only drift', () => {
  const clock = new RunClock({ monotonic: () => 0, wall: () => PLANNED }, 1, PLANNED)
  clock.metServer(PLANNED)
  clock.metServer(PLANNED + 60)
  expect(clock.read().serverOffsetMs).toBe(PLANNED)
})
