import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Celsius, expectOk } from '../../src/kernel/index.js'
import { type CourseReading, dose, rateAt, type TimeBasis } from '../../src/science/index.js'
import { integrated } from './ode.js'
import { course, ordinaryBasis, seeded } from './support.js'

/** dD/dt = rate, reading by reading, by a library that knows nothing of our curves or how we cut them. */
function doseByLibrary(basis: TimeBasis, readings: readonly CourseReading[]): number {
  let total = 0
  for (const [index, next] of readings.entries()) {
    const before = readings[index - 1]
    if (before === undefined) continue
    const temperature = (at: number) =>
      (before.temperature +
        ((next.temperature - before.temperature) * (at - before.at)) / (next.at - before.at)) as Celsius
    total += integrated((at) => expectOk(rateAt(basis, temperature(at))).rate, before.at, 0, next.at)
  }
  return total
}

describe('dose against an ODE library', () => {
  it('agrees to a millionth on random courses over random developers', () => {
    let worst = 0
    fc.assert(
      fc.property(ordinaryBasis, course, (basis, readings) => {
        const exact = expectOk(dose(basis, readings)).equivalent
        const off = Math.abs(exact / doseByLibrary(basis, readings) - 1)
        worst = Math.max(worst, off)
        // A millionth: the library's own steps stumble a little where the sheet's curve bends at a point.
        expect(off).toBeLessThan(1e-6)
      }),
      seeded(150),
    )
    console.info(`dose against the library: worst ${worst.toPrecision(3)} of 1e-6 allowed`)
    expect(worst).toBeGreaterThan(0)
  })
})
