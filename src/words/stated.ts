import type { Instant } from '../kernel/index.js'
import { writeMinuteOfDay, writeTimeOfDay } from './day.js'
import { say } from './say.js'
import type { Writer } from './writer.js'

/** A moment as well as it is known: to the second, to the minute, or at the pour where it was given no time. */
export function statedMoment(
  at: Instant,
  statedTo: 'second' | 'minute' | 'placed' | null | undefined,
  zone: string,
  writer: Writer,
): string {
  if (statedTo === 'placed') return say('record.at-the-pour', {}, writer)
  return statedTo === 'minute' ? writeMinuteOfDay(at, zone) : writeTimeOfDay(at, zone)
}
