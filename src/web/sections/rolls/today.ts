import { dayAt } from '../../../kernel/index.js'
import { useBench } from '../../shared/api/index.js'
import { deviceClock } from '../../shared/platform/index.js'

/** The day it is where the bench is, as `2026-07-14`. */
export function useTodayHere(): string {
  const zone = useBench().data?.zone ?? 'UTC'
  return dayAt(deviceClock.wall(), zone)
}
