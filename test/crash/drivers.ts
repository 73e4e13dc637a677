import type { routes } from '../../src/wire/index.js'
import type { Ask, Sent } from './asking.js'
import type { Data } from './data.js'
import { benchDrivers } from './drivers-bench.js'
import { peopleDrivers } from './drivers-people.js'
import { orderDrivers, rollDrivers } from './drivers-rolls.js'
import { recipeDrivers, runDrivers } from './drivers-runs.js'
import { shelfDrivers } from './drivers-shelf.js'
import { thermometerDrivers } from './drivers-thermometers.js'
import { timeDrivers } from './drivers-times.js'

type Routes = typeof routes
/** Every route that changes something kept. */
export type WritingRoute = { [N in keyof Routes]: Routes[N]['writes'] extends true ? N : never }[keyof Routes]

/** How one route is driven through a kill, and how its effects are recognised afterwards. */
export interface Driver {
  /** How many connections send at once. */
  readonly lanes: number
  /** Whether the same key sent again gives the first answer. */
  readonly keyed: boolean
  /** Makes what the requests need; the answer gives each lane its n-th request, or null when it has no more. */
  prepare(url: string, lanes: number): Promise<(lane: number, n: number) => Ask | null>
  /** How often the whole of a request's effect is in the data: 0 or 1 if all is well. */
  effects(data: Data, sent: Sent): number
  /** For routes whose later requests overwrite the earlier ones: complaints about the state itself. */
  state?(data: Data, sent: readonly Sent[]): string[]
}

/** One driver for every writing route; a new route without one does not compile, and fails a test. */
export const drivers: { readonly [N in WritingRoute]: Driver } = {
  ...benchDrivers,
  ...timeDrivers,
  ...thermometerDrivers,
  ...recipeDrivers,
  ...runDrivers,
  ...rollDrivers,
  ...orderDrivers,
  ...shelfDrivers,
  ...peopleDrivers,
}
