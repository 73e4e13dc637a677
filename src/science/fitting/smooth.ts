import { isotonic } from './isotonic.js'
import type { MonotoneCurve } from './pchip.js'
import { type QrFactors, qrFactors } from './qr.js'

/** A smoother prepared for one set of x: the readings may then change cheaply. */
export interface MonotoneSmoother {
  readonly through: (ys: readonly number[]) => MonotoneCurve & { readonly nodes: readonly number[] }
}

/**
 * Prepares a smooth curve near (x, y) that never falls, for readings y that each have a standard error.
 *
 * Least squares of the readings in units of their error, and of the third divided derivative in units of
 * `bend`: how strongly the curve may bend. So precise readings are followed and noisy ones evened out; straight
 * lines and parabolas are never changed. Then dips are pooled, and the smooth curve through the nodes has its
 * slopes held to what keeps it rising. With fewer than four points nothing is smoothed.
 *
 * x rises strictly, two or more, errors and bend above 0; anything else is a bug and throws. Preparing costs
 * about points³ operations, each curve about points².
 * Sources: Whittaker 1923 (graduation); Fritsch & Carlson 1980 (slopes that keep a cubic monotone).
 */
export function monotoneSmoother(
  xs: readonly number[],
  standardErrors: readonly number[],
  bend: number,
): MonotoneSmoother {
  const count = xs.length
  if (count < 2 || standardErrors.length !== count || !(bend > 0) || standardErrors.some((error) => !(error > 0)))
    throw new RangeError('A smooth curve needs two or more x, a positive error for each, and a positive bend.')
  if (xs.some((x, i) => i > 0 && !(x > (xs[i - 1] as number))))
    throw new RangeError('A smooth curve needs x that rises from point to point.')
  const rows = [...unitRows(standardErrors), ...bendRows(xs, bend)]
  const factors = qrFactors(rows)
  const weights = standardErrors.map((error) => 1 / (error * error))
  const spline = splineSlopes(xs)
  return {
    through: (ys) => {
      const aims = [...ys.map((y, i) => y / (standardErrors[i] as number)), ...rows.slice(count).map(() => 0)]
      const smooth = factors.solve(aims) as number[]
      const nodes = isotonic(smooth, weights)
      return { ...hermite(xs, nodes, keptRising(xs, nodes, spline(nodes))), nodes }
    },
  }
}

const unitRows = (errors: readonly number[]): number[][] =>
  errors.map((error, i) => errors.map((_, j) => (i === j ? 1 / error : 0)))

/** Third divided derivatives (six over the product of distances each way), over the bend. */
function bendRows(xs: readonly number[], bend: number): number[][] {
  return xs.slice(3).map((_, start) => {
    const row: number[] = new Array(xs.length).fill(0)
    const four = xs.slice(start, start + 4)
    four.forEach((x, i) => {
      const product = four.reduce((so, other, j) => (i === j ? so : so * (x - other)), 1)
      row[start + i] = 6 / product / bend
    })
    return row
  })
}

/** Slopes at the nodes of the cubic spline whose end pieces are parabolas' continuation (not-a-knot where it can). */
function splineSlopes(xs: readonly number[]): (ys: readonly number[]) => number[] {
  const last = xs.length - 1
  const width = (i: number): number => (xs[i + 1] as number) - (xs[i] as number)
  if (last === 1) return (ys) => new Array<number>(2).fill(((ys[1] as number) - (ys[0] as number)) / width(0))
  const rows = xs.map((_, i) => {
    const row: number[] = new Array(xs.length).fill(0)
    if (i === 0 || i === last) {
      // The second derivative is constant over the end piece.
      row[i] = 1
      row[i === 0 ? 1 : last - 1] = 1
    } else {
      row[i - 1] = width(i)
      row[i] = 2 * (width(i - 1) + width(i))
      row[i + 1] = width(i - 1)
    }
    return row
  })
  const factors: QrFactors = qrFactors(rows)
  return (ys) => {
    const rise = (i: number): number => ((ys[i + 1] as number) - (ys[i] as number)) / width(i)
    const aims = xs.map((_, i) => {
      if (i === 0) return 2 * rise(0)
      if (i === last) return 2 * rise(last - 1)
      return 3 * (width(i) * rise(i - 1) + width(i - 1) * rise(i))
    })
    return factors.solve(aims) as number[]
  }
}

/** Slopes between 0 and three times the flatter neighbour: enough for a cubic that never falls. */
const keptRising = (xs: readonly number[], ys: readonly number[], slopes: readonly number[]): number[] =>
  slopes.map((slope, i) => {
    const rise = (from: number): number =>
      from < 0 || from + 1 >= xs.length
        ? Number.POSITIVE_INFINITY
        : ((ys[from + 1] as number) - (ys[from] as number)) / ((xs[from + 1] as number) - (xs[from] as number))
    return Math.max(0, Math.min(slope, 3 * rise(i - 1), 3 * rise(i)))
  })

/** The cubics with these values and slopes at the nodes; outside, the end tangent goes on. */
function hermite(xs: readonly number[], ys: readonly number[], slopes: readonly number[]): MonotoneCurve {
  const last = xs.length - 1
  const pieceOf = (x: number): number => {
    let low = 0
    let high = last - 1
    while (low < high) {
      const middle = (low + high + 1) >> 1
      if ((xs[middle] as number) <= x) low = middle
      else high = middle - 1
    }
    return low
  }
  const cubic = (x: number) => {
    const i = pieceOf(x)
    const width = (xs[i + 1] as number) - (xs[i] as number)
    const rise = ((ys[i + 1] as number) - (ys[i] as number)) / width
    const [left, right] = [slopes[i] as number, slopes[i + 1] as number]
    return {
      s: x - (xs[i] as number),
      y: ys[i] as number,
      left,
      square: (3 * rise - 2 * left - right) / width,
      cube: (left + right - 2 * rise) / (width * width),
    }
  }
  const endOf = (x: number): number | null => (x < (xs[0] as number) ? 0 : x > (xs[last] as number) ? last : null)
  return {
    at: (x) => {
      const end = endOf(x)
      if (end !== null) return (ys[end] as number) + (slopes[end] as number) * (x - (xs[end] as number))
      const { s, y, left, square, cube } = cubic(x)
      return y + s * (left + s * (square + s * cube))
    },
    slopeAt: (x) => {
      const end = endOf(x)
      if (end !== null) return slopes[end] as number
      const { s, left, square, cube } = cubic(x)
      return left + s * (2 * square + 3 * s * cube)
    },
  }
}
