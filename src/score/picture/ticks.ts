import type { Scale } from './scales.js'

/** Steps of a thermometer's scale that people count in, in its own degrees. */
const DEGREE_STEPS = [1, 2, 5, 10]
const COARSEST = 20

/** Steps of a clock, in seconds, coarse to fine: a coarse one is written before the finer ones fill the gaps. */
const CLOCK_STEPS = [36_000, 7200, 3600, 1800, 600, 300, 120, 60, 30, 15, 5, 1]

/** An axis that has ticks enough takes no finer step than this part of it; a few stray figures would only confuse. */
const FINEST = 14

/** An axis made `by` the finest step of degrees for which it `fits`, its figures apart; by the coarsest when none does. */
export function finestDegrees<Axis>(by: (step: number) => Axis, fits: (axis: Axis) => boolean): Axis {
  for (const step of DEGREE_STEPS) {
    const axis = by(step)
    if (fits(axis)) return axis
  }
  return by(COARSEST)
}

/** Multiples of `step` from `from` to `to`, both included. */
export function multiples(step: number, from: number, to: number): number[] {
  const [first, last] = [Math.ceil(from / step - 1e-9), Math.floor(to / step + 1e-9)]
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => (first + i) * step)
}

/**
 * Times to write along a logarithmic axis, in seconds, shortest first: round times first, then finer ones
 * wherever they stay `least` lengths apart. Never more than `most`.
 */
export function timeTicks(scale: Scale, least: number, most = 9): number[] {
  const ticks: number[] = []
  const free = (time: number) => ticks.every((tick) => Math.abs(scale.at(tick) - scale.at(time)) >= least)
  for (const step of CLOCK_STEPS) {
    if (ticks.length >= 4 && step < (scale.to - scale.from) / FINEST) break
    for (const time of multiples(step, scale.from, scale.to)) {
      if (time > 0 && ticks.length < most && free(time)) ticks.push(time)
    }
  }
  return ticks.sort((a, b) => a - b)
}

/** The span widened to round times, each to about an eighth of itself, so that the axis ends at ones that can be written. */
export function roundSpan(shortest: number, longest: number): { from: number; to: number } {
  const stepOf = (time: number) => CLOCK_STEPS.find((candidate) => candidate <= time / 8) ?? 1
  const [low, high] = [stepOf(shortest), stepOf(longest)]
  const from = Math.floor(shortest / low) * low
  return { from: from > 0 ? from : shortest, to: Math.ceil(longest / high) * high }
}
