import { expectOk, idsFrom, SeededRandom, SetClock } from '../../src/kernel/index.js'
import type { Store } from '../../src/lab/index.js'
import { type Database, openStore } from '../../src/store/index.js'
import { START } from './calendar.js'
import type { LogEntry } from './darkroom.js'
import { furnishTwoYears } from './generate.js'

export interface Furnished {
  readonly store: Store
  readonly log: readonly LogEntry[]
}

/**
 * Opens an empty database and furnishes it; everything follows from the seed. `through` may stand between the
 * generator and the store, to watch it. The caller closes the store.
 */
export async function openTwoYears(
  database: Database,
  seed: number,
  through: (store: Store) => Store = (store) => store,
): Promise<Furnished> {
  const clock = new SetClock(START)
  const random = new SeededRandom(seed)
  const store = expectOk(await openStore(database, { clock, ids: idsFrom(clock, random) }))
  try {
    return { store, log: await furnishTwoYears(through(store), { seed, clock, random }) }
  } catch (thrown) {
    await store.close()
    throw thrown
  }
}
