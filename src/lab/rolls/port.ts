import type { Instant } from '../../kernel/index.js'
import type { RollEvent as EventView, RollSearch, RollStatement } from '../../wire/index.js'

export type RollState = EventView['state']

/** One step on a roll's way. One that `retracts` another has no state of its own. */
export interface RollEvent {
  readonly id: string
  readonly rollId: string
  readonly at: Instant
  readonly by: string
  readonly state: RollState | null
  readonly runId: string | null
  readonly hook: string
  readonly reason: string
  readonly batchId: string | null
  readonly retracts: string | null
}

/** Where a roll is: what its steps come to. */
export interface Whereabouts {
  readonly state: RollState
  readonly stateAt: Instant
  readonly runId: string | null
  readonly hook: string
}

/** The number a roll goes by: unique on the bench, and in order. `year` is 0 where the pattern has none. */
export interface RollNumber {
  readonly year: number
  readonly n: number
  readonly text: string
}

/** A roll as it stands: its newest words and where it is. */
export interface RollRecord extends Whereabouts {
  readonly id: string
  readonly number: RollNumber
  readonly twin: number | null
  readonly takenInAt: Instant
  readonly takenInBy: string
  readonly revision: number
  readonly orderId: string | null
  readonly statement: RollStatement
}

export interface RollRevision {
  readonly rollId: string
  readonly revision: number
  readonly savedAt: Instant
  readonly savedBy: string
  readonly orderId: string | null
  readonly batchId: string | null
  readonly statement: RollStatement
}

/** Numbers kept for one device, to be given while it is away from the server. */
export interface NumberBlock {
  readonly id: string
  readonly device: string
  readonly pattern: string
  readonly year: number
  readonly first: number
  readonly last: number
  readonly reservedAt: Instant
}

/** How far a kind of numbers was given in a year; the year is 0 where numbers have none. */
export interface NumberCounter {
  readonly kind: 'roll' | 'twin'
  readonly year: number
  readonly last: number
}

export interface RollsWanted extends Omit<RollSearch, 'taken_in_from' | 'taken_in_to'> {
  readonly takenInFrom: Instant | null
  readonly takenInBefore: Instant | null
  /** Only rolls after this one in the list, newest number first. */
  readonly after: { readonly year: number; readonly n: number } | null
  readonly most: number
}

export interface RollsPort {
  /** The next `count` numbers of a year, never given twice: the first of them. */
  nextNumbers(kind: NumberCounter['kind'] | 'lot', year: number, count: number): Promise<number>
  /** The last number of rolls that was given, a kind and a year; by kind, then year. */
  counters(): Promise<NumberCounter[]>
  /** No number up to this one is given from now on. */
  raiseCounter(kind: NumberCounter['kind'], year: number, last: number): Promise<void>
  pattern(): Promise<string | null>
  setPattern(pattern: string): Promise<void>
  addBlock(block: NumberBlock): Promise<void>
  block(id: string): Promise<NumberBlock | null>
  /** Adds a roll with its first revision; `taken` when its number is. */
  add(roll: RollRecord): Promise<'added' | 'taken'>
  roll(id: string): Promise<RollRecord | null>
  /** Every roll, by number. */
  all(): Promise<RollRecord[]>
  byNumber(number: string): Promise<RollRecord | null>
  /** These rolls, their rows held until the transaction ends, in the order asked for; those not there are left out. */
  hold(ids: readonly string[]): Promise<RollRecord[]>
  /** Newest number first, and how many there are in all. */
  find(wanted: RollsWanted): Promise<{ rolls: RollRecord[]; found: number }>
  /** By number, whatever order they belong to. */
  ofOrders(orderIds: readonly string[]): Promise<RollRecord[]>
  ofRun(runId: string): Promise<RollRecord[]>
  /** A further revision of a roll that is held, and the roll as it then stands. */
  revise(roll: RollRecord, revision: RollRevision): Promise<void>
  revision(rollId: string, revision: number): Promise<RollRevision | null>
  /** All that was said of a roll, oldest first. */
  revisions(rollId: string): Promise<RollRevision[]>
  /** A step of a roll that is held, and where it then is. */
  addEvent(event: RollEvent, whereabouts: Whereabouts): Promise<void>
  /** Oldest first. */
  events(rollIds: readonly string[]): Promise<RollEvent[]>
  /** What a batch did. */
  batch(batchId: string): Promise<{ revisions: RollRevision[]; events: RollEvent[] }>
}
