import { idsFrom, type Random, type SetClock } from '../../src/kernel/index.js'
import type { Store } from '../../src/lab/index.js'
import { START } from './calendar.js'
import { Darkroom, type LogEntry, type Season } from './darkroom.js'
import { enteringSheets } from './seasons/entering-sheets.js'
import { handingOver } from './seasons/handing-over.js'
import { houseKeeping } from './seasons/house-keeping.js'
import { shelf } from './seasons/shelf.js'
import { thermometerTerms } from './seasons/thermometer-terms.js'

/** What goes on in the two years. A later part of the program adds its season here. */
const SEASONS: readonly Season[] = [houseKeeping, thermometerTerms, enteringSheets, shelf, handingOver]

/**
 * Fills an empty store with two years of a community darkroom, 1 October 2024 to 30 September 2026, by the
 * commands people use. `seed` decides what happens, `random` feeds the ids, the clock is moved along. The same
 * three give the same rows, ids included. Returns what was done and what was tried and refused.
 */
export async function furnishTwoYears(
  store: Store,
  { seed, clock, random }: { seed: number; clock: SetClock; random: Random },
): Promise<readonly LogEntry[]> {
  clock.advance(START - clock.now())
  const darkroom = new Darkroom(store, clock, idsFrom(clock, random))
  const episodes = SEASONS.flatMap((season) => season(seed)).sort((one, other) => one.at - other.at)
  for (const [turn, { at, happens }] of episodes.entries()) {
    darkroom.waitUntil(at)
    darkroom.handsOver(turn)
    await happens(darkroom)
  }
  return darkroom.log
}
