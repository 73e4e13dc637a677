import type { Scale } from './scales.js'

/** Steps of a thermometer's scale that people count in, in its own degrees. */
const DEGREE_STEPS = [0.5, 1, 2, 5, 10, 20]

/** Steps of a clock, in seconds, coarse to fine: a coarse one is written before the finer ones fill the gaps. */
const CLOCK_STEPS = [36_000, 7200, 3600, 1800, 600, 300, 120, 60, 30, 15, 5, 1]

/** The finest step of degrees that leaves at least `least` lengths between ticks, `perDegree` lengths each. */
export const degreeStep = (perDegree: number, least: number): number =>
  DEGREE_STEPS.find((step) => step * perDegree >= least) ?? 20

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
    if (ticks.length >= 4 && step < (scale.to - scale.from) / 16) break
    for (const time of multiples(step, scale.from, scale.to)) {
      if (time > 0 && ticks.length < most && free(time)) ticks.push(time)
    }
  }
  return ticks.sort((a, b) => a - b)
}

/** The span widened to round times, so that the axis starts and ends at one that can be written. */
export function roundSpan(shortest: number, longest: number): { from: number; to: number } {
  const step = CLOCK_STEPS.find((candidate) => candidate <= Math.max(1, (longest - shortest) / 8)) ?? 1
  const from = Math.floor(shortest / step) * step
  return { from: from > 0 ? from : shortest, to: Math.ceil(longest / step) * step }
}
