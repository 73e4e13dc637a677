import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Celsius, celsius, expectOk, type Seconds, seconds } from '../../src/kernel/index.js'
import {
  defineBasis,
  developingTime,
  dose,
  rateAt,
  rateOf,
  type TimeBasis,
  timeAt,
  timeForCourse,
} from '../../src/science/index.js'
import { course, ordinaryBasis, seeded, temperatureBetween } from './support.js'

describe('time and temperature', () => {
  it('warmer is never slower', () => {
    fc.assert(
      fc.property(
        ordinaryBasis,
        temperatureBetween(11, 31),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (basis, temperature, by) => {
          const [cooler, warmer] = [timeAt(basis, temperature), timeAt(basis, celsius(temperature + by))]
          if (cooler.ok && warmer.ok) expect(warmer.value.time).toBeLessThanOrEqual(cooler.value.time * (1 + 1e-12))
        },
      ),
      seeded(500),
    )
  })

  it('between two points the time lies between theirs', () => {
    fc.assert(
      fc.property(ordinaryBasis, fc.double({ min: 0, max: 1, noNaN: true }), (basis, part) => {
        for (const [index, warm] of basis.points.entries()) {
          const cold = basis.points[index - 1]
          if (cold === undefined) continue
          const { time } = expectOk(
            timeAt(basis, celsius(cold.temperature + part * (warm.temperature - cold.temperature))),
          )
          expect(time).toBeLessThanOrEqual(cold.time * (1 + 1e-12))
          expect(time).toBeGreaterThanOrEqual(warm.time * (1 - 1e-12))
        }
      }),
      seeded(300),
    )
  })

  it('runs on without a jump in steps of 0.01 °C from 10 to 40 °C, and is refused past the usable range', () => {
    fc.assert(
      fc.property(ordinaryBasis, (basis) => {
        // A monotone cubic is at most three times as steep as its steepest stretch; past the ends K holds.
        const most = 0.01 * Math.max(3 * steepest(basis), Math.log(Math.max(6, basis.coefficient.value)) / 10) * 1.1
        let before: number | null = null
        for (let step = 1000; step <= 4000; step++) {
          const temperature = celsius(step / 100)
          const answer = timeAt(basis, temperature)
          const usable = temperature >= basis.usable.from && temperature <= basis.usable.to
          if (!usable) expect(answer.ok).toBe(false)
          if (usable && !answer.ok) expect(answer.problem.code).toBe('times.impossible-answer')
          const now = answer.ok ? Math.log(answer.value.time) : null
          if (now !== null && before !== null && Math.abs(now - before) > most)
            expect(`${Math.abs(now - before)} at ${temperature}`).toBe(`at most ${most}`)
          before = now
        }
      }),
      seeded(25),
    )
  })

  it('rate times time is the reference time, and its many-question form says the same', () => {
    fc.assert(
      fc.property(ordinaryBasis, temperatureBetween(12, 30), (basis, temperature) => {
        const { rate } = expectOk(rateAt(basis, temperature))
        expect(rate * expectOk(timeAt(basis, temperature)).time).toBeCloseTo(basis.reference.time, 8)
        expect(expectOk(rateOf(basis)(temperature))).toBe(rate)
      }),
      seeded(200),
    )
  })

  it('the factors multiply to the time, and the bands are not negative', () => {
    fc.assert(
      fc.property(
        ordinaryBasis,
        temperatureBetween(12, 30),
        fc.double({ min: 0.5, max: 2, noNaN: true }),
        (basis, temperature, factor) => {
          const modifiers = [{ name: 'agitation', factor, origin: 'practice' }] as const
          const answer = expectOk(developingTime(basis, temperature, { modifiers }))
          const product = answer.factors.reduce<number>((time, one) => time * one.factor, answer.reference.time)
          expect(answer.time / product).toBeCloseTo(1, 12)
          expect(answer.band.bySheetAndLaw).toBeGreaterThan(0)
          expect(answer.band.byThermometer).toBeGreaterThanOrEqual(0)
        },
      ),
      seeded(200),
    )
  })
})

const steepest = ({ points }: TimeBasis): number =>
  points.reduce((most, point, index) => {
    const before = points[index - 1]
    if (before === undefined) return most
    return Math.max(most, Math.log(before.time / point.time) / (point.temperature - before.temperature))
  }, 0)

describe('dose', () => {
  it('plan and dose agree to 0.1 s at constant temperature', () => {
    let worst = 0
    fc.assert(
      fc.property(ordinaryBasis, temperatureBetween(12, 30), (basis, temperature) => {
        const { time } = expectOk(timeAt(basis, temperature))
        const readings = [0, time].map((at) => ({ at: at as Seconds, temperature }))
        const off = Math.abs(expectOk(dose(basis, readings)).equivalent - basis.reference.time)
        const planned = expectOk(timeForCourse(basis, readings.slice(0, 1), basis.reference.time))
        worst = Math.max(worst, off, Math.abs(planned.elapsed - time))
      }),
      seeded(300),
    )
    console.info(`plan against dose: worst ${worst.toPrecision(3)} s of 0.1 s allowed`)
    expect(worst).toBeLessThan(0.1)
  })

  it('adds up over any split of the course', () => {
    fc.assert(
      fc.property(
        ordinaryBasis,
        course,
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        fc.nat(),
        (basis, readings, part, pick) => {
          const index = pick % (readings.length - 1)
          const [before, after] = [readings[index] as (typeof readings)[0], readings[index + 1] as (typeof readings)[0]]
          const middle = {
            at: seconds(before.at + part * (after.at - before.at)),
            temperature: celsius(before.temperature + part * (after.temperature - before.temperature)),
          }
          const of = (some: typeof readings) => expectOk(dose(basis, some)).equivalent
          const parts = of([...readings.slice(0, index + 1), middle]) + of([middle, ...readings.slice(index + 1)])
          expect(parts / of(readings)).toBeCloseTo(1, 9)
        },
      ),
      seeded(200),
    )
  })

  it('grows with warmth at every reading', () => {
    fc.assert(
      fc.property(ordinaryBasis, course, fc.double({ min: 0, max: 1, noNaN: true }), (basis, readings, by) => {
        const warmer = readings.map(({ at, temperature }) => ({ at, temperature: (temperature + by) as Celsius }))
        expect(expectOk(dose(basis, warmer)).equivalent).toBeGreaterThanOrEqual(
          expectOk(dose(basis, readings)).equivalent * (1 - 1e-9),
        )
      }),
      seeded(200),
    )
  })

  it('the moment of pouring out has exactly the dose asked for', () => {
    fc.assert(
      fc.property(ordinaryBasis, course, fc.double({ min: 0.05, max: 0.95, noNaN: true }), (basis, readings, part) => {
        const whole = expectOk(dose(basis, readings)).equivalent
        const { at } = expectOk(timeForCourse(basis, readings, (whole * part) as Seconds))
        const until = readings.filter((reading) => reading.at < at)
        const [before, after] = [until[until.length - 1], readings[until.length]]
        if (before === undefined || after === undefined) throw new Error('the moment lies inside the course')
        const share = (at - before.at) / (after.at - before.at)
        const last = { at, temperature: celsius(before.temperature + share * (after.temperature - before.temperature)) }
        expect(Math.abs(expectOk(dose(basis, [...until, last])).equivalent - whole * part)).toBeLessThan(1e-3)
      }),
      seeded(200),
    )
  })
})

describe('several points and one coefficient', () => {
  it('a sheet printed from a coefficient gives that coefficient back', () => {
    fc.assert(
      fc.property(fc.double({ min: 1.2, max: 5.5, noNaN: true }), (coefficient) => {
        const points = [16, 18, 20, 23].map((temperature) => ({
          temperature: celsius(temperature),
          time: seconds(600 * coefficient ** ((20 - temperature) / 10)),
        }))
        expect(expectOk(defineBasis({ kind: 'ordinary', points })).coefficient.value).toBeCloseTo(coefficient, 8)
      }),
      seeded(100),
    )
  })
})
