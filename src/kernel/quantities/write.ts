/** Between a number and its unit: too narrow to part them, and never broken at the end of a line. */
const NARROW_SPACE = '\u202f'
const MINUS = '\u2212'

/** A number and its unit, set as everywhere in the program. */
export const measure = (number: string, sign: string): string => `${number}${NARROW_SPACE}${sign}`

/** A number with a fixed count of decimals, a real minus sign, and no sign on what rounds to zero. */
export function fixed(value: number, digits: number): string {
  const text = Math.abs(value).toFixed(digits)
  return value < 0 && Number(text) !== 0 ? MINUS + text : text
}

/** The number as someone typed it, without trailing zeros; at most four decimals. */
export const plainNumber = (value: number): string => String(Number(value.toFixed(4))).replace('-', MINUS)

/** Up to where a unit and its decimals are used when writing; the last step has no end. */
export interface Step {
  readonly below?: number
  readonly sign: string
  /** How much of the inner unit one of it is. */
  readonly factor: number
  readonly digits: number
}

/**
 * Writes with the first step that the value, rounded as that step would print it, stays below; so 9.96 mL is
 * `10 mL`, as it will be when read back, and never `10.0 mL`.
 */
export function writeInSteps(value: number, steps: readonly Step[]): string {
  const texts = steps.map((step) => ({ step, number: fixed(value / step.factor, step.digits) }))
  const fitting = texts.find(({ step, number }) => Number(number) < (step.below ?? Number.POSITIVE_INFINITY))
  if (fitting === undefined) throw new RangeError('The last step of a quantity has no upper end.')
  return measure(fitting.number, fitting.step.sign)
}
