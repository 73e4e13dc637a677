import { describe, expect, it } from 'vitest'
import { SetClock } from './clock.js'
import { idsFrom, SeededRandom, uuidV7 } from './random.js'

const zeros = { bytes: (count: number) => new Uint8Array(count) }
const ones = { bytes: (count: number) => new Uint8Array(count).fill(0xff) }

describe('an identifier', () => {
  it('begins with the milliseconds of its making, highest byte first', () => {
    const at = 0x0123456789ab
    expect(uuidV7(new SetClock(at), zeros)).toBe('01234567-89ab-7000-8000-000000000000')
  })

  it('says version 7 and the usual variant whatever chance gives', () => {
    expect(uuidV7(new SetClock(0), ones)).toBe('00000000-0000-7fff-bfff-ffffffffffff')
  })

  it('takes an instant before 1970 as 1970, and drops the part of a millisecond', () => {
    expect(uuidV7(new SetClock(-5), zeros)).toBe('00000000-0000-7000-8000-000000000000')
    expect(uuidV7(new SetClock(1.9), zeros)).toBe('00000000-0001-7000-8000-000000000000')
  })

  it('sorts by the moment it was made', () => {
    const clock = new SetClock(1_700_000_000_000)
    const ids = idsFrom(clock, new SeededRandom(7))
    const made = Array.from({ length: 300 }, () => {
      clock.advance(1)
      return ids.next()
    })
    expect([...made].sort()).toEqual(made)
    expect(new Set(made).size).toBe(made.length)
  })
})

describe('seeded chance', () => {
  const draws = (seed: number) =>
    Array.from(
      { length: 1000 },
      (
        (random) => () =>
          random.unit()
      )(new SeededRandom(seed)),
    )

  it('gives the same again for the same seed and another for another', () => {
    expect(draws(1)).toEqual(draws(1))
    expect(draws(1)).not.toEqual(draws(2))
  })

  it('lies from 0 up to 1 and about evenly', () => {
    const values = draws(20261)
    expect(Math.min(...values)).toBeGreaterThanOrEqual(0)
    expect(Math.max(...values)).toBeLessThan(1)
    const mean = values.reduce((sum, value) => sum + value, 0) / values.length
    // The standard error of 1000 even draws is 0.009; five of them.
    expect(Math.abs(mean - 0.5)).toBeLessThan(0.046)
  })

  it('gives as many bytes as asked, over the whole range', () => {
    const bytes = new SeededRandom(3).bytes(4000)
    expect(bytes).toHaveLength(4000)
    expect(Math.max(...bytes)).toBe(255)
    expect(Math.min(...bytes)).toBe(0)
  })
})
