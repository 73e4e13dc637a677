import type { Writable } from 'node:stream'
import { type Clock, expectOk, type Ids, ok } from '../kernel/index.js'
import { type Context, type Store, settleBench } from '../lab/index.js'
import type { Config } from './config.js'

/** What the running program holds; every handler is given it. */
export interface House {
  readonly store: Store
  readonly clock: Clock
  readonly ids: Ids
  readonly config: Config
  /** The house's own bench. A restore may bring another. */
  homeBench: string
  /** Moments of wrong pairing codes, of all callers together: nobody gets more tries by coming from elsewhere. */
  readonly wrongCodes: number[]
  /** The open live feeds. A restore ends them, because they follow data that is no more; clients come back. */
  readonly feeds: Set<Writable>
  /** Where the built web pages lie; null serves the interface alone. */
  readonly webFolder: string | null
  /** Where it listens; once listening never 0. */
  port: number
  /** The address other devices use, once listening. */
  address(): string
}

/** Finds the house's own bench, or makes it on the first day. */
export async function settle(store: Store, clock: Clock, ids: Ids, zone: string): Promise<string> {
  const context: Context = { actor: { role: 'owner', id: 'owner' }, bench: ids.next(), clock, ids }
  return expectOk(await store.write(context, null, async (rooms) => ok(await settleBench(context, rooms, zone))))
}
