import fc from 'fast-check'
import { type Celsius, celsius, expectOk, seconds } from '../../src/kernel/index.js'
import { type CourseReading, defineBasis, type RateLaw, type TimeBasis } from '../../src/science/index.js'

/** Property tests run the same cases every time. */
export const seeded = (numRuns: number) => ({ seed: 20_261, numRuns })

const laws = fc.constantFrom<RateLaw>('exponential', 'arrhenius')

/** Steps down a sheet: °C to the next point and by what factor its time falls (K between 1 and 5). */
const step = fc.record({
  degrees: fc.double({ min: 0.5, max: 4, noNaN: true }),
  coefficient: fc.double({ min: 1, max: 5, noNaN: true }),
})

/** Ordinary developers: one to eight points from about 16 °C up, by either law, the coefficient stated or not. */
export const ordinaryBasis: fc.Arbitrary<TimeBasis> = fc
  .record({
    law: laws,
    coldest: fc.double({ min: 14, max: 18, noNaN: true }),
    longest: fc.double({ min: 200, max: 3600, noNaN: true }),
    steps: fc.array(step, { maxLength: 7 }),
    coefficient: fc.option(fc.double({ min: 1.1, max: 6, noNaN: true }), { nil: undefined }),
  })
  .map(({ law, coldest, longest, steps, coefficient }) => {
    const points = [{ temperature: coldest, time: longest }]
    for (const { degrees, coefficient: k } of steps) {
      const before = points[points.length - 1] as { temperature: number; time: number }
      const [temperature, time] = [before.temperature + degrees, before.time * k ** (-degrees / 10)]
      if (temperature <= 40 && time >= 5) points.push({ temperature, time })
    }
    return expectOk(
      defineBasis({
        kind: 'ordinary',
        law,
        points: points.map((point) => ({ temperature: celsius(point.temperature), time: seconds(point.time) })),
        ...(coefficient === undefined ? {} : { coefficient }),
      }),
    )
  })

/** Courses of two to twelve readings between 12 and 30 °C, a second to three minutes apart. */
export const course: fc.Arbitrary<readonly CourseReading[]> = fc
  .array(
    fc.record({
      gap: fc.double({ min: 1, max: 180, noNaN: true }),
      temperature: fc.double({ min: 12, max: 30, noNaN: true }),
    }),
    { minLength: 2, maxLength: 12 },
  )
  .map((steps) => {
    let at = 0
    return steps.map(({ gap, temperature }) => {
      at += gap
      return { at: seconds(at), temperature: celsius(temperature) }
    })
  })

export const temperatureBetween = (low: number, high: number): fc.Arbitrary<Celsius> =>
  fc.double({ min: low, max: high, noNaN: true }).map(celsius)
