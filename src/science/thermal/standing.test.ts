import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  type Celsius,
  celsius,
  expectOk,
  fahrenheit,
  millilitres,
  type Seconds,
  SeededRandom,
  seconds,
} from '../../kernel/index.js'
import {
  coldFixing,
  coldWashing,
  constantFrom,
  GUESS_SPREAD,
  guessConstant,
  meanOver,
  reachesAt,
  readAgainAfter,
  type StandingReading,
  standsAt,
  startForMean,
} from './index.js'

const runs = { seed: 20_261, numRuns: 300 }
const between = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true })
const standing = (from: number, around: number, constant: number) => ({
  from: celsius(from),
  around: celsius(around),
  constant: seconds(constant),
})
const anyStanding = fc.tuple(between(2, 60), between(2, 60), between(60, 30_000)).map((of) => standing(...of))

describe('a bath that stands', () => {
  it('has gone half of the way after 0.693 time constants', () => {
    expect(expectOk(standsAt(standing(30, 20, 1000), seconds(1000 * Math.LN2)))).toBeCloseTo(25, 10)
  })

  it('goes on from where it is: two waits are one', () => {
    fc.assert(
      fc.property(anyStanding, between(0, 5000), between(0, 5000), (bath, one, other) => {
        const midway = expectOk(standsAt(bath, one as Seconds))
        const twice = expectOk(standsAt({ ...bath, from: midway }, other as Seconds))
        expect(twice).toBeCloseTo(expectOk(standsAt(bath, (one + other) as Seconds)), 8)
      }),
      runs,
    )
  })

  it('draws nearer and never passes', () => {
    fc.assert(
      fc.property(anyStanding, between(0, 20_000), (bath, after) => {
        const then = expectOk(standsAt(bath, after as Seconds))
        expect(Math.abs(then - bath.around)).toBeLessThanOrEqual(Math.abs(bath.from - bath.around) + 1e-9)
        expect((then - bath.around) * (bath.from - bath.around)).toBeGreaterThanOrEqual(0)
      }),
      runs,
    )
  })

  it('reaches a temperature when it is there: the inverse', () => {
    fc.assert(
      fc.property(anyStanding, between(0, 3), (bath, constants) => {
        fc.pre(Math.abs(bath.from - bath.around) > 0.5)
        const after = seconds(constants * bath.constant)
        expect(expectOk(reachesAt(bath, expectOk(standsAt(bath, after))))).toBeCloseTo(after, 3)
      }),
      runs,
    )
  })

  it('never comes to its surroundings, past them, or back', () => {
    for (const wanted of [20, 19, 31])
      expect(reachesAt(standing(30, 20, 1000), celsius(wanted))).toMatchObject({
        problem: { code: 'thermal.never-there', field: 'wanted' },
      })
    expect(expectOk(reachesAt(standing(30, 20, 1000), celsius(30)))).toBe(0)
    expect(expectOk(reachesAt(standing(20, 20, 1000), celsius(20)))).toBe(0)
  })

  it('has the mean that its course adds up to', () => {
    const bath = standing(24, 18, 2400)
    const steps = 20_000
    const course = Array.from({ length: steps }, (_, i) => expectOk(standsAt(bath, seconds((600 * (i + 0.5)) / steps))))
    expect(expectOk(meanOver(bath, seconds(600)))).toBeCloseTo(course.reduce((sum, t) => sum + t, 0) / steps, 6)
  })

  it('starts so that the mean is right', () => {
    fc.assert(
      fc.property(between(18, 25), between(10, 30), between(1200, 20_000), between(60, 1200), (t, room, tau, time) => {
        const from = expectOk(startForMean(celsius(t), celsius(room), seconds(tau), seconds(time)))
        const bath = { from, around: celsius(room), constant: seconds(tau) }
        expect(expectOk(meanOver(bath, seconds(time)))).toBeCloseTo(t, 9)
      }),
      runs,
    )
    expect(startForMean(celsius(60), celsius(-30), seconds(60), seconds(6000)).ok).toBe(false)
  })

  it('is read again when it has moved half a degree, or never', () => {
    const bath = standing(24, 18, 7200)
    const again = expectOk(readAgainAfter(bath)) as Seconds
    expect(expectOk(standsAt(bath, again))).toBeCloseTo(23.5, 10)
    expect(expectOk(readAgainAfter(bath, 2))).toBeGreaterThan(again)
    expect(expectOk(readAgainAfter(standing(20.5, 20, 7200)))).toBeNull()
    expect(readAgainAfter(bath, 0.01)).toMatchObject({ problem: { field: 'moved' } })
  })

  it('is refused out of its ranges', () => {
    const bath = standing(24, 18, 7200)
    expect(standsAt({ ...bath, constant: 29 as Seconds }, seconds(1))).toMatchObject({ problem: { field: 'constant' } })
    expect(standsAt({ ...bath, around: 101 as Celsius }, seconds(1))).toMatchObject({ problem: { field: 'around' } })
    expect(standsAt({ ...bath, from: -1 as Celsius }, seconds(1))).toMatchObject({ problem: { field: 'from' } })
    expect(standsAt(bath, -1 as Seconds)).toMatchObject({ problem: { field: 'time' } })
    expect(meanOver(bath, 0 as Seconds)).toMatchObject({ problem: { field: 'time' } })
  })
})

describe('a first guess at a time constant', () => {
  it('is larger for more, for glass in air than bare metal it is smaller, and far smaller in water', () => {
    const guess = (volume: number, ...of: ['steel' | 'plastic' | 'glass', 'air' | 'water']) =>
      expectOk(guessConstant(millilitres(volume), ...of)).value
    expect(guess(1000, 'steel', 'air') / guess(500, 'steel', 'air')).toBeCloseTo(Math.cbrt(2), 10)
    expect(guess(500, 'glass', 'air')).toBeLessThan(guess(500, 'steel', 'air'))
    expect(guess(500, 'steel', 'water')).toBeLessThan(guess(500, 'plastic', 'water'))
    expect(guess(500, 'plastic', 'water')).toBeLessThan(guess(500, 'plastic', 'air') / 5)
  })

  it('says that it is an assumption, good to a factor', () => {
    const { value, low, high, origin } = expectOk(guessConstant(millilitres(500), 'plastic', 'air'))
    expect(origin).toBe('assumption')
    expect([value / (low as number), (high as number) / value]).toEqual([
      expect.closeTo(GUESS_SPREAD, 10),
      expect.closeTo(GUESS_SPREAD, 10),
    ])
    expect(guessConstant(millilitres(49), 'steel', 'air')).toMatchObject({ problem: { field: 'volume' } })
  })
})

describe('a time constant by readings', () => {
  const readingsOf = (bath: ReturnType<typeof standing>, moments: number[], noise = (_: number) => 0) =>
    moments.map(
      (at, i): StandingReading => ({
        at: seconds(at),
        temperature: celsius(expectOk(standsAt(bath, seconds(at))) + noise(i)),
      }),
    )

  it('comes back from a course without error', () => {
    fc.assert(
      fc.property(between(24, 40), between(10, 20), between(600, 20_000), (from, room, tau) => {
        const readings = readingsOf(standing(from, room, tau), [0, tau / 4, tau])
        const found = expectOk(constantFrom(readings, celsius(room)))
        expect(found.value / tau).toBeCloseTo(1, 9)
        expect(found.origin).toBe('measured')
        expect(found.low as number).toBeLessThan(tau)
        if (found.high !== null) expect(found.high).toBeGreaterThan(tau)
      }),
      runs,
    )
  })

  it('has an interval by the error of reading from two readings already', () => {
    const readings = readingsOf(standing(24, 4, 12_000), [0, 2400])
    const wide = expectOk(constantFrom(readings, celsius(4), 0.4))
    const narrow = expectOk(constantFrom(readings, celsius(4), 0.1))
    // By hand: the slope of two points has the error of both logarithms together.
    const off = readings.map(({ temperature }) => temperature - 4)
    const slopeError = Math.hypot(...off.map((left) => 0.1 / left)) / 2400
    expect(1 / (narrow.low as number) - 1 / narrow.value).toBeCloseTo(slopeError, 9)
    expect((wide.high as number) - (wide.low as number)).toBeGreaterThan(
      (narrow.high as number) - (narrow.low as number),
    )
  })

  it('holds the truth in 95 of 100 courses with errors of reading', () => {
    const bath = standing(30, 15, 5400)
    const random = new SeededRandom(20_261)
    const normal = () => Math.sqrt(-2 * Math.log(1 - random.unit())) * Math.cos(2 * Math.PI * random.unit())
    const courses = Array.from({ length: 500 }, () =>
      readingsOf(bath, [0, 600, 1200, 1800, 2700, 3600], () => 0.1 * normal()),
    )
    const held = courses.filter((readings) => {
      const { low, high } = expectOk(constantFrom(readings, celsius(15), 0.1 * 1.96))
      return (low as number) <= 5400 && (high ?? Number.POSITIVE_INFINITY) >= 5400
    })
    // The wider of two intervals holds the truth a little more often than either: 95 to 99 %.
    expect(held.length / courses.length).toBeGreaterThanOrEqual(0.94)
    expect(held.length / courses.length).toBeLessThanOrEqual(0.995)
  })

  it('is as wide as the readings scatter when that is more than they should', () => {
    const scatter = (i: number) => (i % 2 === 0 ? 0.5 : -0.5)
    const readings = readingsOf(standing(30, 15, 5400), [0, 900, 1800, 2700, 3600], scatter)
    const found = expectOk(constantFrom(readings, celsius(15), 0.05))
    const calm = expectOk(
      constantFrom(readingsOf(standing(30, 15, 5400), [0, 900, 1800, 2700, 3600]), celsius(15), 0.05),
    )
    const width = ({ low, value }: typeof found) => 1 / (low as number) - 1 / value
    expect(width(found)).toBeGreaterThan(5 * width(calm))
  })

  it('counts a reading near the surroundings for less', () => {
    const near = [
      ...readingsOf(standing(40, 20, 1000), [0, 500, 1000]),
      { at: seconds(4600), temperature: celsius(20.4) },
    ]
    const found = expectOk(constantFrom(near, celsius(20)))
    expect(Math.abs(found.value - 1000)).toBeLessThan(15)
  })

  it('leaves the upper end open when the readings could stand still', () => {
    const readings = [
      { at: seconds(0), temperature: celsius(24) },
      { at: seconds(60), temperature: celsius(23.9) },
    ]
    expect(expectOk(constantFrom(readings, celsius(18))).high).toBeNull()
  })

  it('refuses what does not draw nearer', () => {
    const code = (...temperatures: number[]) => {
      const found = constantFrom(
        temperatures.map((t, i) => ({ at: seconds(i * 600), temperature: celsius(t) })),
        celsius(20),
      )
      return found.ok ? null : found.problem.code
    }
    expect(code(24, 23)).toBeNull()
    expect(code(16, 17)).toBeNull()
    for (const wrong of [
      [23, 24],
      [24, 24],
      [24, 20],
      [24, 19],
    ])
      expect(code(...wrong)).toBe('thermal.does-not-approach')
    expect(code(24)).toBe('thermal.bad-value')
    const atOnce = [24, 23].map((t) => ({ at: seconds(0), temperature: celsius(t) }))
    expect(constantFrom(atOnce, celsius(20)).ok).toBe(false)
  })
})

describe('in the cold', () => {
  const fixing = (f: number) => expectOk(coldFixing(fahrenheit(f))).factor
  const washing = (f: number) => expectOk(coldWashing(fahrenheit(f))).factor

  it('fixing takes twice as long for each 18 °F below 68 °F, and no less above', () => {
    for (const [temperature, factor] of [
      [68, 1],
      [50, 2],
      [80, 1],
      [41, 2 ** 1.5],
    ] as const)
      expect(fixing(temperature)).toBeCloseTo(factor, 10)
  })

  it('washing takes twice and four times as long at 50 and 35 °F', () => {
    for (const [temperature, factor] of [
      [65, 1],
      [50, 2],
      [35, 4],
      [75, 1],
    ] as const)
      expect(washing(temperature)).toBeCloseTo(factor, 10)
  })

  it('never less for colder, and refused frozen or hot', () => {
    for (let f = 33; f < 100; f++) {
      expect(fixing(f)).toBeGreaterThanOrEqual(fixing(f + 1))
      expect(washing(f)).toBeGreaterThanOrEqual(washing(f + 1))
    }
    for (const wrong of [-0.1, 40.1, Number.NaN]) {
      expect(coldFixing(wrong as Celsius)).toMatchObject({ problem: { field: 'temperature' } })
      expect(coldWashing(wrong as Celsius)).toMatchObject({ problem: { field: 'temperature' } })
    }
  })
})
