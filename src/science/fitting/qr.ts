/** A tall matrix taken apart into an orthogonal part and a triangle, for least squares. */
export interface QrFactors {
  /** x with the least |A x − b|; null where the columns depend on each other. */
  readonly solve: (rightHandSide: readonly number[]) => number[] | null
  /** (AᵀA)⁻¹, row by row; null where the columns depend on each other. */
  readonly inverseOfSquares: () => number[][] | null
  readonly fullRank: boolean
}

/** A column whose remainder is this small beside its length is taken for a sum of the columns before it. */
const DEPENDENT = 1e-13

/**
 * Householder QR of a matrix given by rows, at least as many rows as columns. Used for least squares without
 * squaring the condition number, as normal equations would. About 2·rows·columns² operations.
 *
 * Rows of different length, or fewer rows than columns, are a bug and throw.
 * Source: G. Golub & C. Van Loan, Matrix Computations, §5.2.
 */
export function qrFactors(rows: readonly (readonly number[])[]): QrFactors {
  const count = rows.length
  const width = rows[0]?.length ?? 0
  if (width === 0 || count < width || rows.some((row) => row.length !== width))
    throw new RangeError(`Least squares needs as many rows as columns or more, all alike; got ${count} by ${width}.`)
  const columns = Array.from({ length: width }, (_, j) => Float64Array.from(rows, (row) => row[j] as number))
  const reflectors: Float64Array[] = []
  const diagonal: number[] = []
  let fullRank = true
  for (let k = 0; k < width; k++) {
    const column = columns[k] as Float64Array
    const whole = Math.hypot(...column)
    const rest = Math.hypot(...column.subarray(k))
    if (!(rest > DEPENDENT * whole)) fullRank = false
    const reflector = column.slice(k)
    const pivot = (reflector[0] as number) > 0 ? -rest : rest
    reflector[0] = (reflector[0] as number) - pivot
    reflectors.push(reflector)
    diagonal.push(pivot)
    for (let j = k + 1; j < width; j++) reflect(reflector, columns[j] as Float64Array, k)
  }
  const upper = (row: number, column: number): number =>
    row === column ? (diagonal[row] as number) : ((columns[column] as Float64Array)[row] as number)

  return {
    fullRank,
    solve: (rightHandSide) => {
      if (rightHandSide.length !== count) throw new RangeError(`Expected ${count} values, got ${rightHandSide.length}.`)
      if (!fullRank) return null
      const b = Float64Array.from(rightHandSide)
      reflectors.forEach((reflector, k) => {
        reflect(reflector, b, k)
      })
      return backSubstituted(upper, width, b)
    },
    inverseOfSquares: () => (fullRank ? inverseOfSquares(upper, width) : null),
  }
}

/** Mirrors the values from `start` on in the plane across the reflector. */
function reflect(reflector: Float64Array, values: Float64Array, start: number): void {
  let along = 0
  let square = 0
  for (let i = 0; i < reflector.length; i++) {
    const part = reflector[i] as number
    along += part * (values[start + i] as number)
    square += part * part
  }
  if (square === 0) return
  const twice = (2 * along) / square
  for (let i = 0; i < reflector.length; i++) {
    values[start + i] = (values[start + i] as number) - twice * (reflector[i] as number)
  }
}

type Upper = (row: number, column: number) => number

function backSubstituted(upper: Upper, width: number, b: Float64Array): number[] {
  const x: number[] = new Array(width).fill(0)
  for (let i = width - 1; i >= 0; i--) {
    let left = b[i] as number
    for (let j = i + 1; j < width; j++) left -= upper(i, j) * (x[j] as number)
    x[i] = left / upper(i, i)
  }
  return x
}

/** R⁻¹ R⁻ᵀ. */
function inverseOfSquares(upper: Upper, width: number): number[][] {
  const inverse = Array.from({ length: width }, (_, k) => {
    const unit = new Float64Array(width)
    unit[k] = 1
    return backSubstituted(upper, width, unit)
  })
  return inverse.map((_, i) =>
    inverse.map((_, j) => inverse.reduce((sum, column) => sum + (column[i] as number) * (column[j] as number), 0)),
  )
}
