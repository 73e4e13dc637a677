import fc from 'fast-check'
import type { ContrastLaw } from '../../src/science/index.js'
import type { Truth } from './simulate/strips.js'

export const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
/** Films from soft to hard. */
export const truths: fc.Arbitrary<Truth> = fc.record({ gamma: between(0.4, 1.2), base: between(0.05, 0.4) })

/** Developers from slow to quick, the image beginning within a minute. */
export const laws: fc.Arbitrary<ContrastLaw> = fc.record({
  most: between(0.7, 2.5),
  rate: between(0.001, 0.01),
  start: between(0, 60),
})
