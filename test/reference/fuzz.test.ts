import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Celsius, Seconds } from '../../src/kernel/index.js'
import {
  type BasisInput,
  boilingPoint,
  checkIsPossible,
  classSet,
  coefficientFromEnergy,
  coefficientOverTen,
  correctionByRecord,
  correctionOf,
  defineBasis,
  developingTime,
  dose,
  effectOfUncorrectedError,
  energyFromCoefficient,
  fitLaw,
  type KeptCheck,
  rateAt,
  timeAt,
  timeForCourse,
} from '../../src/science/index.js'
import { answers, any, sound } from './sound.js'
import { seeded } from './support.js'

const plausible = fc.oneof(
  { weight: 30, arbitrary: fc.integer({ min: 0, max: 4500 }).map((hundredths) => hundredths / 100) },
  { weight: 1, arbitrary: any },
)
const plausibleTime = fc.oneof(
  { weight: 30, arbitrary: fc.integer({ min: 60, max: 3000 }) },
  { weight: 2, arbitrary: fc.double({ min: 5, max: 21_600, noNaN: true }) },
  { weight: 1, arbitrary: any },
)

/** Half of the sheets are put in the order of an ordinary developer, so that enough are accepted. */
const sheet = fc
  .tuple(fc.array(fc.record({ temperature: plausible, time: plausibleTime }), { maxLength: 4 }), fc.boolean())
  .map(([points, ordered]) => {
    if (!ordered) return points
    const temperatures = points.map(({ temperature }) => temperature).sort((one, other) => one - other)
    const times = points.map(({ time }) => time).sort((one, other) => other - one)
    return temperatures.map((temperature, index) => ({ temperature, time: times[index] as number }))
  })

const input = fc.record(
  {
    kind: fc.constantFrom('ordinary', 'single-bath', 'fixed'),
    law: fc.constantFrom('exponential', 'arrhenius'),
    points: sheet,
    coefficient: fc.oneof(
      { weight: 9, arbitrary: fc.double({ min: 1.01, max: 6, noNaN: true }) },
      { weight: 1, arbitrary: any },
    ),
    usable: fc.oneof(fc.constant({ from: 0, to: 45 }), fc.record({ from: plausible, to: plausible })),
    window: fc.record({ from: plausible, to: plausible }),
  },
  { requiredKeys: ['kind', 'points'] },
) as unknown as fc.Arbitrary<BasisInput>

describe('arbitrary numbers', () => {
  it('developing times and doses answer or refuse', () => {
    let accepted = 0
    const readings = fc.array(fc.record({ at: any, temperature: plausible }), { maxLength: 4 })
    const question = fc.record({ factor: any, thermometerError: any, target: any, limit: any })
    fc.assert(
      fc.property(input, plausible, readings, question, (given, temperature, course, asked) => {
        const basis = defineBasis(given)
        answers(basis)
        if (!basis.ok) return
        accepted++
        const at = temperature as Celsius
        const sorted = course.sort((one, other) => one.at - other.at) as unknown as Parameters<typeof dose>[1]
        answers(timeAt(basis.value, at))
        answers(rateAt(basis.value, at))
        answers(developingTime(basis.value, at))
        const modifiers = [{ name: 'other', factor: asked.factor, origin: 'measured' }] as const
        answers(developingTime(basis.value, at, { modifiers, thermometerError: asked.thermometerError }))
        answers(dose(basis.value, sorted))
        answers(timeForCourse(basis.value, sorted, asked.target as Seconds, { limit: asked.limit as Seconds }))
        answers(effectOfUncorrectedError(basis.value, at, (temperature + 1) as Celsius))
        for (const law of ['exponential', 'arrhenius'] as const) sound(fitLaw(basis.value, law))
      }),
      seeded(10_000),
    )
    expect(accepted).toBeGreaterThan(1000)
  })

  it('conversions, boiling points and scales answer or refuse', () => {
    fc.assert(
      fc.property(any, any, (one, other) => {
        answers(energyFromCoefficient(one))
        answers(coefficientFromEnergy(one))
        answers(coefficientOverTen(one, other))
        answers(boilingPoint({ altitude_m: one }))
        answers(boilingPoint({ pressure_hPa: one }))
        for (const method of ['entered', 'comparison', 'ice', 'boiling'] as const)
          answers(checkIsPossible(method, one, other))
      }),
      seeded(10_000),
    )
  })

  it('corrections and class sets answer or refuse', () => {
    const near = fc.double({ min: 0, max: 45, noNaN: true }).chain((truth) =>
      fc.record({
        read: fc.oneof(
          { weight: 9, arbitrary: fc.double({ min: truth - 4, max: truth + 4, noNaN: true }) },
          { weight: 1, arbitrary: any },
        ),
        true: fc.constant(truth),
        method: fc.constantFrom('entered', 'comparison', 'ice', 'boiling'),
      }),
    )
    fc.assert(
      fc.property(
        fc.array(near, { maxLength: 4 }),
        fc.double({ min: -90, max: 200, noNaN: true }),
        fc.option(any),
        (checks, read, reference) => {
          const correction = correctionOf(checks as unknown as Parameters<typeof correctionOf>[0])
          answers(correction)
          if (correction.ok) sound(correction.value.at(read as Celsius))
          const kept = checks.map((check, i) => ({ ...check, withdrawn: i % 3 === 2 })) as unknown as KeptCheck[]
          const byRecord = correctionByRecord(kept)
          answers(byRecord)
          if (byRecord.ok) sound(byRecord.value.at(read as Celsius))
          const set = checks.map((check, index) => ({ name: `${index}`, read: check.read as Celsius }))
          answers(classSet(set, reference))
        },
      ),
      seeded(10_000),
    )
  })
})
