import type { SheetPoint } from './definition.js'
import { LIMITS } from './limits.js'

const STEPS = [60, 30, 15, 5, 1]

/**
 * Half of what the sheet's times are rounded to, in seconds: the largest of a minute, half, quarter, five
 * seconds or one that divides them all, but never taken as more than half a minute. A sheet of whole minutes
 * may simply have met whole minutes.
 */
export function halfStep(points: readonly SheetPoint[]): number {
  const step = STEPS.find((candidate) => points.every((point) => isMultiple(point.time, candidate))) ?? 1
  return Math.min(step, LIMITS.roundingStep.most) / 2
}

const isMultiple = (time: number, step: number): boolean => Math.abs(time / step - Math.round(time / step)) < 1e-9
