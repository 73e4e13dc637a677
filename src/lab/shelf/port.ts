import type { Instant } from '../../kernel/index.js'
import type { ContainerStatement, EntryTold } from '../../wire/index.js'
import type { StatementsPort } from '../statements.js'

/**
 * So much of what a container holds, in whole numbers so that the ledger balances to the last of them. All four move
 * together: a third of a bottle takes a third of each along.
 */
export interface Portion {
  /** Microlitres, or milligrams of a powder. */
  readonly held: number
  /** Microlitres that its count goes by: as it was filled. In a jug, the part of the waste that holds silver. */
  readonly basis: number
  /** Millionths of an ordinary roll that are taken of its count. */
  readonly worked: number
  /** Millionths of a roll that it met, whatever the family: what its silver goes by. */
  readonly met: number
}

/** What an entry changes in one container; below zero for what leaves it. */
export interface Leg extends Portion {
  readonly containerId: string
  /** The lot that it is of; null for what is in a package. */
  readonly lotId: string | null
}

/** One entry of the ledger. It is never changed: one that was wrong is taken back by another. */
export interface LedgerEntry {
  readonly id: string
  readonly at: Instant
  readonly notedAt: Instant
  readonly by: string
  readonly told: EntryTold
  readonly note: string
  readonly legs: readonly Leg[]
  readonly retracts: string | null
}

/** A container as the ledger leaves it. */
export interface Container extends Portion {
  readonly id: string
  readonly kind: ContainerStatement['kind']
  readonly unit: 'ml' | 'g'
  /** What it can hold; null for a package. */
  readonly room: number | null
  readonly lotId: string | null
  /** Counts its entries; whoever saw another number saw another state. */
  readonly seq: number
  readonly changedAt: Instant
}

/** One mixed batch. */
export interface Lot {
  readonly id: string
  readonly code: string
  readonly productId: string
  readonly parts: readonly number[] | null
  readonly mixedAt: Instant
  readonly mixedBy: string
  /** Microlitres. */
  readonly mixed: number
  readonly note: string
}

/** What must hold in a container at the very moment at which a leg is booked. */
export interface Demand {
  /** Nobody booked anything since it was looked at. */
  readonly seen?: number
  /** The count after it is at most this, in millionths of a roll. */
  readonly carries?: number
}

/** An entry with its demands, by container. */
export interface Posting {
  readonly entry: LedgerEntry
  readonly demands: Readonly<Record<string, Demand>>
}

export interface LotsWanted {
  readonly words: string
  /** Only lots mixed before this one. */
  readonly after: { readonly mixedAt: Instant; readonly id: string } | null
  readonly most: number
}

export interface ShelfPort {
  readonly containers: StatementsPort<ContainerStatement>
  /** An empty container, beside the first revision of what is said of it. */
  addContainer(container: Container): Promise<void>
  setRoom(id: string, room: number): Promise<void>
  container(id: string): Promise<Container | null>
  /** All that are there, removed ones too, in no order. */
  all(): Promise<Container[]>
  some(ids: readonly string[]): Promise<Container[]>
  /** Those that hold some of a lot. */
  holding(lotId: string): Promise<Container[]>
  /** `taken` when another lot bears the code. */
  addLot(lot: Lot, product: string): Promise<'added' | 'taken'>
  lot(id: string): Promise<Lot | null>
  lots(ids: readonly string[]): Promise<Lot[]>
  lotByCode(code: string): Promise<Lot | null>
  /** Newest first, and how many there are in all. */
  findLots(wanted: LotsWanted): Promise<{ lots: Lot[]; found: number }>
  /**
   * Books an entry: each leg by one statement that looks and changes at once, so that two who want the last of a bottle
   * cannot both have it. Answers with the container that would not have it; then the write must fail as a whole.
   */
  post(posting: Posting): Promise<'posted' | { readonly refusedBy: string }>
  entry(id: string): Promise<LedgerEntry | null>
  /** Oldest first, in the order in which they happened. */
  entriesOf(containerIds: readonly string[]): Promise<LedgerEntry[]>
  entriesOfLots(lotIds: readonly string[]): Promise<LedgerEntry[]>
  /** Tests that stand, of any lot of these products, oldest first. */
  testsOfProducts(productIds: readonly string[]): Promise<{ productId: string; entry: LedgerEntry }[]>
  /** Uses that stand and were booked for a run, oldest first. */
  usesOfRun(runId: string): Promise<LedgerEntry[]>
}
