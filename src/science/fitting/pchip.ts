/** A smooth curve through points that never overshoots them. */
export interface MonotoneCurve {
  /** The curve at x; outside the points the first or last cubic goes on (callers decide what holds there). */
  readonly at: (x: number) => number
  /** Its slope at x. */
  readonly slopeAt: (x: number) => number
}

/**
 * Monotone piecewise cubic through (x, y): between two points it stays between their values, so times that
 * fall with temperature never rise between two sheet points. Two points give the straight line.
 *
 * x must rise strictly and there must be two or more points; anything else is a bug and throws.
 * Source: Fritsch & Carlson 1980, slopes by Fritsch & Butland 1984 (weighted harmonic mean), one-sided
 * three-point slopes at the ends; the same choices as scipy's PchipInterpolator.
 */
export function pchip(xs: readonly number[], ys: readonly number[]): MonotoneCurve {
  const count = xs.length
  if (count < 2 || ys.length !== count)
    throw new RangeError(`A curve needs two or more x with as many y; got ${count} and ${ys.length}.`)
  const widths: number[] = []
  const rises: number[] = []
  for (let i = 0; i < count - 1; i++) {
    const width = (xs[i + 1] as number) - (xs[i] as number)
    if (!(width > 0)) throw new RangeError('A curve needs x that rises from point to point.')
    widths.push(width)
    rises.push(((ys[i + 1] as number) - (ys[i] as number)) / width)
  }
  const slopes = nodeSlopes(widths, rises)

  const intervalOf = (x: number): number => {
    let low = 0
    let high = count - 2
    while (low < high) {
      const middle = (low + high + 1) >> 1
      if ((xs[middle] as number) <= x) low = middle
      else high = middle - 1
    }
    return low
  }
  // On each interval: y + s·m + s²·c + s³·d with s the distance from its left end.
  const pieces = rises.map((rise, i) => {
    const [left, right, width] = [slopes[i] as number, slopes[i + 1] as number, widths[i] as number]
    return {
      x: xs[i] as number,
      y: ys[i] as number,
      slope: left,
      square: (3 * rise - 2 * left - right) / width,
      cube: (left + right - 2 * rise) / (width * width),
    }
  })
  const pieceAt = (x: number) => pieces[intervalOf(x)] as (typeof pieces)[number]

  return {
    at: (x) => {
      const piece = pieceAt(x)
      const s = x - piece.x
      return piece.y + s * (piece.slope + s * (piece.square + s * piece.cube))
    },
    slopeAt: (x) => {
      const piece = pieceAt(x)
      const s = x - piece.x
      return piece.slope + s * (2 * piece.square + 3 * s * piece.cube)
    },
  }
}

function nodeSlopes(widths: readonly number[], rises: readonly number[]): number[] {
  const last = rises.length - 1
  if (last === 0) return [rises[0] as number, rises[0] as number]
  const slopes = [endSlope(widths[0] as number, widths[1] as number, rises[0] as number, rises[1] as number)]
  for (let i = 1; i <= last; i++) {
    const [before, after] = [rises[i - 1] as number, rises[i] as number]
    // A flat stretch or a turn gets a level tangent: that is what keeps the curve from overshooting.
    if (before * after <= 0) {
      slopes.push(0)
      continue
    }
    const [left, right] = [widths[i - 1] as number, widths[i] as number]
    const [weightBefore, weightAfter] = [2 * right + left, right + 2 * left]
    slopes.push((weightBefore + weightAfter) / (weightBefore / before + weightAfter / after))
  }
  slopes.push(
    endSlope(widths[last] as number, widths[last - 1] as number, rises[last] as number, rises[last - 1] as number),
  )
  return slopes
}

/** Slope at an end by its two nearest stretches, held to the sign of the nearest and to three times it. */
function endSlope(near: number, far: number, nearRise: number, farRise: number): number {
  const slope = ((2 * near + far) * nearRise - near * farRise) / (near + far)
  if (Math.sign(slope) !== Math.sign(nearRise)) return 0
  if (Math.sign(nearRise) !== Math.sign(farRise) && Math.abs(slope) > 3 * Math.abs(nearRise)) return 3 * nearRise
  return slope
}
