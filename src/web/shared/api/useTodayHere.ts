import { dayAt } from '../../../kernel/index.js'
import { deviceClock } from '../platform/index.js'
import { useBench } from './queries.js'

/** The day it is where the bench is, as `2026-07-14`. */
export function useTodayHere(): string {
  const zone = useBench().data?.zone ?? 'UTC'
  return dayAt(deviceClock.wall(), zone)
}
