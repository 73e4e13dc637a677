/** Two-sided 95 % points of Student's t for 1 to 30 degrees of freedom (any statistics table). */
const TABLE: readonly number[] = [
  12.7062, 4.3027, 3.1824, 2.7764, 2.5706, 2.4469, 2.3646, 2.306, 2.2622, 2.2281, 2.201, 2.1788, 2.1604, 2.1448, 2.1314,
  2.1199, 2.1098, 2.1009, 2.093, 2.086, 2.0796, 2.0739, 2.0687, 2.0639, 2.0595, 2.0555, 2.0518, 2.0484, 2.0452, 2.0423,
]
const NORMAL = 1.959964

/**
 * How many standard errors either side hold 95 %, for a whole number of degrees of freedom from 1 up.
 * Past the table the expansion about the normal distribution (Abramowitz & Stegun 26.7.5), good to 1e-5.
 * Fewer than one is a bug and throws.
 */
export function studentT95(degreesOfFreedom: number): number {
  if (!Number.isInteger(degreesOfFreedom) || degreesOfFreedom < 1)
    throw new RangeError(`Student's t needs a whole number of degrees of freedom from 1 up; got ${degreesOfFreedom}.`)
  const printed = TABLE[degreesOfFreedom - 1]
  if (printed !== undefined) return printed
  const z = NORMAL
  const first = (z ** 3 + z) / 4
  const second = (5 * z ** 5 + 16 * z ** 3 + 3 * z) / 96
  const third = (3 * z ** 7 + 19 * z ** 5 + 17 * z ** 3 - 15 * z) / 384
  return z + first / degreesOfFreedom + second / degreesOfFreedom ** 2 + third / degreesOfFreedom ** 3
}
