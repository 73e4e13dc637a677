import { beforeAll, describe, expect, it } from 'vitest'
import { type Celsius, celsius, expectOk, ok, seconds } from '../../src/kernel/index.js'
import { basisOf, type TimeRecord } from '../../src/lab/index.js'
import { developingTime, dose, rateAt, type TimeBasis, timeForCourse } from '../../src/science/index.js'
import { FURNISHING_MS, standingTimes, withTwoYears } from './fixture.js'
import { limitsOf, offSheet, steepest, type TimeAt, troubles } from './held.js'

const SEED = 2024
const TENTH = 0.1

interface Held {
  readonly record: TimeRecord
  readonly basis: TimeBasis
  readonly at: TimeAt
}

const held = (record: TimeRecord): Held => {
  const basis = expectOk(basisOf(record))
  const at: TimeAt = (temperature) => {
    const answer = developingTime(basis, celsius(temperature))
    return answer.ok ? ok(answer.value.time) : answer
  }
  return { record, basis, at }
}

/** Eleven temperatures from one limit of a record to the other, and its sheet's own. */
function within(record: TimeRecord): Celsius[] {
  const { from, to } = limitsOf(record)
  const even = Array.from({ length: 11 }, (_, place) => celsius(from + ((to - from) * place) / 10))
  return [...even, ...record.points.map(({ temperature }) => temperature)]
}

const named = ({ film, developer, exposureIndex }: TimeRecord) => `${film}, ${developer}, ${exposureIndex}`

describe('every standing time of the two-year bench', () => {
  let all: Held[]
  beforeAll(
    () =>
      withTwoYears(SEED, async ({ store }) => {
        all = (await standingTimes(store)).map(held)
      }),
    FURNISHING_MS,
  )

  it('agrees between plan, dose and rate to 0.1 s at constant temperature', () => {
    const apart = all.flatMap(({ record, basis, at }) =>
      within(record).flatMap((temperature) => {
        const time = expectOk(at(temperature))
        const held = { at: seconds(0), temperature }
        const course = expectOk(timeForCourse(basis, [held], basis.reference.time))
        const done = expectOk(dose(basis, [held, { at: seconds(time), temperature }]))
        const { rate } = expectOk(rateAt(basis, temperature))
        const off = Math.max(
          Math.abs(basis.reference.time / rate - time),
          Math.abs(course.elapsed - time),
          // Equivalent seconds run at the reference temperature: back to seconds at this one.
          (Math.abs(done.equivalent - basis.reference.time) * time) / basis.reference.time,
        )
        return off <= TENTH ? [] : [`${named(record)} at ${temperature} °C: ${off} s`]
      }),
    )
    expect(apart).toEqual([])
    expect(all.length).toBeGreaterThan(160)
  })

  it('is continuous wherever a time is given, and refused beyond its limits', () => {
    const found = all.flatMap(({ record, basis, at }) =>
      troubles(record, basis.coefficient.value, at).map((trouble) => `${named(record)}: ${trouble}`),
    )
    expect(found).toEqual([])
  })

  it('gives the sheet’s own time at its points, without a leap beside them', () => {
    const found = all.flatMap(({ record, basis, at }) =>
      offSheet(record, steepest(record, basis.coefficient.value), at).map((trouble) => `${named(record)}: ${trouble}`),
    )
    expect(found).toEqual([])
  })

  it('gives a time up to each limit and none a hundredth beyond', () => {
    const found = all.flatMap(({ record, at }) => {
      const { from, to } = limitsOf(record)
      const given = [from, to].filter((limit) => !at(limit).ok)
      const beyond = [from - 0.01, to + 0.01].filter((limit) => at(limit).ok)
      return [...given, ...beyond].map((limit) => `${named(record)} at ${limit} °C`)
    })
    expect(found).toEqual([])
  })

  describe('and this would be noticed:', () => {
    const changed: readonly (readonly [string, (time: number, temperature: number) => number])[] = [
      ['a leap down in the middle', (time, temperature) => (temperature < 21.0001 ? time : time * 0.99999)],
      ['a leap up in the middle', (time, temperature) => (temperature < 21.0001 ? time : time * 1.00001)],
      ['one time out of line', (time, temperature) => (Math.abs(temperature - 20) < 0.001 ? time * 1.01 : time)],
      ['longer when warmer', (time, temperature) => time * 2 ** (temperature / 5)],
      ['much too steep', (time, temperature) => time * 0.5 ** (temperature - 20)],
    ]
    it.each(changed)('%s', (_, change) => {
      const { record, basis, at } = all.find(({ record }) => record.kind === 'ordinary') as Held
      const faulty: TimeAt = (temperature) => {
        const answer = at(temperature)
        return answer.ok ? ok(change(answer.value, temperature)) : answer
      }
      expect(troubles(record, basis.coefficient.value, at)).toEqual([])
      expect(troubles(record, basis.coefficient.value, faulty)).not.toEqual([])
    })

    it('a time beyond the limit, and a fixed time that moves', () => {
      const { record, basis, at } = all.find(({ record }) => record.kind === 'single-bath') as Held
      const generous: TimeAt = (temperature) =>
        at(Math.min(Math.max(temperature, limitsOf(record).from), limitsOf(record).to))
      expect(troubles(record, basis.coefficient.value, generous)).not.toEqual([])
      const fixed = all.find(({ record }) => record.kind === 'fixed') as Held
      const moved: TimeAt = (temperature) => ok(195 - temperature * 1e-6)
      expect(troubles(fixed.record, 1, moved)).not.toEqual([])
    })
  })
})
