import type { Instant, Result } from '../kernel/index.js'
import type { FilmStatement, KeepView, ProductStatement, VesselStatement } from '../wire/index.js'
import type { Context } from './context.js'
import type { HousePort } from './house/port.js'
import type { KitPort } from './kit/port.js'
import type { PeoplePort } from './people/port.js'
import type { RecipesPort } from './recipes/port.js'
import type { OrdersPort } from './rolls/orders-port.js'
import type { RollsPort } from './rolls/port.js'
import type { RunsPort } from './runs/port.js'
import type { ShelfPort } from './shelf/port.js'
import type { StatementsPort } from './statements.js'
import type { TimesPort } from './times/port.js'

/** The ports of all rooms, bound to one bench and one transaction. */
export interface Rooms {
  readonly times: TimesPort
  readonly kit: KitPort
  readonly recipes: RecipesPort
  readonly runs: RunsPort
  readonly rolls: RollsPort
  readonly orders: OrdersPort
  readonly films: StatementsPort<FilmStatement>
  readonly vessels: StatementsPort<VesselStatement>
  readonly views: StatementsPort<KeepView>
  readonly products: StatementsPort<ProductStatement>
  readonly shelf: ShelfPort
  readonly house: HousePort
  readonly people: PeoplePort
  readonly feed: FeedPort
}

/** One change as other screens hear of it. */
export interface Change {
  readonly kind:
    | 'times'
    | 'thermometers'
    | 'recipes'
    | 'runs'
    | 'rolls'
    | 'orders'
    | 'films'
    | 'vessels'
    | 'products'
    | 'shelf'
    | 'bench'
    | 'devices'
  readonly subject: string
}
export interface FeedEntry extends Change {
  readonly seq: number
  readonly at: Instant
}
export interface FeedPort {
  /** Appends to the bench's feed; its number is given under the bench's row lock, in the same transaction. */
  tell(change: Change, at: Instant): Promise<void>
  /** Entries after `seq`, oldest first, at most `most`. */
  after(seq: number, most: number): Promise<FeedEntry[]>
  last(): Promise<number>
}

/** A write that may be sent twice: the same key answers with what the first one answered. */
export interface WriteKey {
  readonly key: string
  /** What was asked, so that a key reused for something else is noticed. */
  readonly fingerprint: string
}

/**
 * Storage as the use cases see it. `write` is one transaction: effect, feed rows and write key together; a
 * failed result rolls everything back. Implemented twice (SQLite, PostgreSQL) and held to one behaviour suite.
 */
export interface Store {
  readonly engine: 'sqlite' | 'postgres'
  read<T>(bench: string, work: (rooms: Rooms) => Promise<T>): Promise<T>
  write<T>(context: Context, key: WriteKey | null, work: (rooms: Rooms) => Promise<Result<T>>): Promise<Result<T>>
  /** Calls back after commits on this bench, from this or (PostgreSQL) any process. Returns how to stop. */
  listen(bench: string, heard: () => void): () => void
  /** The whole of what is kept, as lines of JSON: a head line, rows, and a last line with count and checksum. */
  backup(): AsyncIterable<string>
  /** Puts a backup in place of everything, in one transaction; a damaged one changes nothing. */
  restore(lines: AsyncIterable<string>): Promise<Result<{ tables: number; rows: number; dataVersion: number }>>
  close(): Promise<void>
}
