import { levenbergMarquardt, type NonlinearFit } from '../fitting/index.js'
import type { ContrastLaw, ContrastPoint } from './definition.js'

/** How far laws are from the strips, each counted in its own standard error (reading and scatter together). */
export interface Misfit {
  readonly of: (law: ContrastLaw) => number[]
}

export function misfitOf(points: readonly ContrastPoint[], scatter: number): Misfit {
  const weights = points.map(({ standardError = 0 }) => 1 / Math.hypot(standardError, scatter))
  return {
    // Past its start a law goes on below zero here, so that the search can find its way back.
    of: ({ most, rate, start }) =>
      points.map(
        ({ time, contrast }, i) => (most * -Math.expm1(-rate * (time - start)) - contrast) * (weights[i] as number),
      ),
  }
}

/**
 * A law as free numbers: ln most, ln rate and, when it is free, the start. The start is counted in first strips'
 * times and from −1, so that it is a number near 1 also when the image begins at once.
 */
const lawFrom =
  (first: number) =>
  ([most, rate, late]: readonly number[]): ContrastLaw => ({
    most: Math.exp(most as number),
    rate: Math.exp(rate as number),
    start: late === undefined ? 0 : (late - 1) * first,
  })

/** The law nearest to the strips; its start is held at 0 when asked, or when the strips would put it before 0. */
export function nearestLaw(
  points: readonly ContrastPoint[],
  misfit: Misfit,
  freeStart: boolean,
): { readonly law: ContrastLaw; readonly fit: NonlinearFit } {
  const guess = guessed(points)
  const first = (points[0] as ContrastPoint).time
  const lawOf = lawFrom(first)
  const held = levenbergMarquardt(
    (value) => misfit.of(lawOf(value)),
    [Math.log(guess.most), Math.log(guess.rate)],
    OPTIONS,
  )
  const atZero = { law: lawOf(held.value), fit: held }
  if (!freeStart) return atZero
  const free = levenbergMarquardt((value) => misfit.of(lawOf(value)), [...held.value, 1 + guess.start / first], OPTIONS)
  // A search that found no bottom is handed on as such: the law held at 0 would be another one than was asked for.
  if (free.stopped !== 'converged') return { law: lawOf(free.value), fit: free }
  const law = lawOf(free.value)
  return law.start >= 0 ? { law, fit: free } : atZero
}

/**
 * Least sum of squares among the laws that give `contrast` exactly at `time`: the most follows from rate and start,
 * which are free.
 */
export function leastThrough(
  points: readonly ContrastPoint[],
  misfit: Misfit,
  from: ContrastLaw,
  wanted: { readonly time: number; readonly contrast: number },
  freeStart: boolean,
): number {
  const first = (points[0] as ContrastPoint).time
  const lawThrough = (value: readonly number[]): ContrastLaw => {
    const rate = Math.exp(value[0] as number)
    const start = value[1] === undefined ? 0 : (value[1] - 1) * first
    return { most: wanted.contrast / -Math.expm1(-rate * (wanted.time - start)), rate, start }
  }
  const residuals = (value: readonly number[]) => misfit.of(lawThrough(value))
  const held = levenbergMarquardt(residuals, [Math.log(from.rate)], OPTIONS)
  if (!freeStart) return held.sumOfSquares
  const start = Math.min(from.start, 0.9 * Math.min(wanted.time, ...points.map(({ time }) => time)))
  const free = levenbergMarquardt(residuals, [Math.log(from.rate), 1 + start / first], OPTIONS)
  return (free.value[1] as number) >= 1 ? Math.min(free.sumOfSquares, held.sumOfSquares) : held.sumOfSquares
}

const OPTIONS = { mostIterations: 200, tolerance: 1e-10 } as const

/** A law somewhere near: a third above the greatest contrast, through the middle strip. */
function guessed(points: readonly ContrastPoint[]): ContrastLaw {
  const most = 1.33 * Math.max(...points.map(({ contrast }) => contrast))
  const middle = points[points.length >> 1] as ContrastPoint
  const rate = -Math.log1p(-Math.min(0.9, middle.contrast / most)) / middle.time
  return { most, rate: Math.max(rate, 1e-6), start: 0.1 * (points[0] as ContrastPoint).time }
}
