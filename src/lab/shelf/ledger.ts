import type { Instant } from '../../kernel/index.js'
import type { FillState } from '../../science/index.js'
import type { ContainerStatement, ShelfTest, Station } from '../../wire/index.js'
import { NOTHING, plus } from './amounts.js'
import type { LedgerEntry, Leg, Portion } from './port.js'

/** How a container lets what is in it age: whether air stands over it. */
export interface Shape {
  readonly stands: 'stoppered' | 'collapsible' | 'tank' | 'tray'
  /** Null where it holds as much as was bought. */
  readonly room: number | null
}

export const shapeOf = (statement: ContainerStatement): Shape =>
  statement.kind === 'bottle'
    ? { stands: statement.shape, room: Math.round(statement.holds_ml * 1000) }
    : { stands: 'stoppered', room: statement.kind === 'jug' ? Math.round(statement.holds_ml * 1000) : null }

/** From this part on a stoppered bottle counts as full: an assumption, since tables know only full and half-full. */
export const FULL_FROM = { part: 0.9, origin: 'assumption' } as const

const fillState = ({ stands, room }: Shape, held: number): FillState => {
  if (stands === 'tank' || stands === 'tray') return stands
  return stands === 'collapsible' || room === null || held >= FULL_FROM.part * room ? 'full' : 'half-full'
}

/** A stretch in one fill state; `to` is null for the one that lasts. */
export interface FillStretch {
  readonly state: FillState
  readonly from: Instant
  readonly to: Instant | null
}

/** One use of what is in a container. */
export interface Use {
  readonly entryId: string
  readonly at: Instant
  readonly rolls: number
  readonly pouredMl: number
  readonly lostMl: number
}

export interface TestRead {
  readonly entryId: string
  readonly at: Instant
  readonly met: number
  readonly test: ShelfTest
}

/** What stands in a container and what happened to it since it came in. */
export interface Contents extends Portion {
  readonly lotId: string | null
  readonly since: Instant | null
  readonly station: Station | null
  readonly stretches: readonly FillStretch[]
  readonly uses: readonly Use[]
  readonly tests: readonly TestRead[]
  /** The columns of its book, in microlitres: what came to it after it was filled, left it, and was carried out. */
  readonly added: number
  readonly discarded: number
  readonly carriedOut: number
}

const GONE = {
  lotId: null,
  since: null,
  station: null,
  stretches: [],
  uses: [],
  tests: [],
  added: 0,
  discarded: 0,
  carriedOut: 0,
}
export const EMPTY: Contents = { ...NOTHING, ...GONE }

/** Entries that stand: one that was taken back is gone, and so is the one that took it back. */
export function standingEntries(entries: readonly LedgerEntry[]): LedgerEntry[] {
  const retracted = new Set(entries.map(({ retracts }) => retracts))
  return entries
    .filter(({ id, retracts }) => retracts === null && !retracted.has(id))
    .sort((a, b) => a.at - b.at || (a.id < b.id ? -1 : 1))
}

/** What stands in each container by all its entries, given in any order. */
export function foldLedger(
  entries: readonly LedgerEntry[],
  shapes: ReadonlyMap<string, Shape>,
): ReadonlyMap<string, Contents> {
  const shelf = new Map<string, Contents>()
  for (const entry of standingEntries(entries)) {
    const before = (leg: Leg) => shelf.get(leg.containerId) ?? EMPTY
    const source = entry.legs.find((leg) => leg.held < 0)
    const from = source === undefined ? EMPTY : before(source)
    const after = entry.legs.map((leg) => [leg.containerId, booked(before(leg), leg, entry, from)] as const)
    for (const [id, contents] of after) shelf.set(id, aged(contents, shapes.get(id), entry.at))
  }
  return shelf
}

/** A container with one leg of an entry in its books. */
function booked(before: Contents, leg: Leg, entry: LedgerEntry, from: Contents): Contents {
  const amounts = plus(before, leg)
  // Emptied is emptied: what comes next has nothing to do with what was there.
  if (amounts.held <= 0) return { ...EMPTY, ...amounts }
  const filled = before.held <= 0
  const came: Contents = filled ? cameIn(leg, entry, from) : joined(before, leg, entry, from)
  return { ...came, ...amounts }
}

/** What comes into an empty container: a fresh lot, or a portion of another container with all that befell it. */
function cameIn(leg: Leg, entry: LedgerEntry, from: Contents): Contents {
  const fresh = { ...EMPTY, lotId: leg.lotId, since: entry.at }
  const brought = from.lotId === leg.lotId && leg.lotId !== null && entry.told.kind !== 'mixed'
  return brought ? { ...from, station: null, stretches: closed(from.stretches, entry.at) } : fresh
}

/** What an entry does to a container that holds something already. */
function joined(before: Contents, leg: Leg, entry: LedgerEntry, from: Contents): Contents {
  const { told, at, id } = entry
  switch (told.kind) {
    case 'used': {
      const use = { entryId: id, at, rolls: told.rolls, pouredMl: told.poured_ml, lostMl: told.lost_ml }
      return { ...before, uses: [...before.uses, use], carriedOut: before.carriedOut + Math.max(0, -leg.held) }
    }
    case 'tested':
      return { ...before, tests: [...before.tests, { entryId: id, at, met: told.met_rolls, test: told.test }] }
    case 'stationed':
      return { ...before, station: told.station }
    case 'topped-up':
      return leg.held > 0 ? { ...before, added: before.added + leg.held } : before
    case 'discarded':
      return leg.held < 0 ? { ...before, discarded: before.discarded - leg.held } : before
    case 'moved':
      return leg.held > 0 ? poured(before, from, at) : before
    default:
      return before
  }
}

/** Two portions of one lot in one bottle: the one that stood worse speaks for both, and what befell either counts. */
function poured(into: Contents, from: Contents, at: Instant): Contents {
  const [stood, came] = [closed(into.stretches, at), closed(from.stretches, at)]
  const worse = airedFor(came) > airedFor(stood) ? came : stood
  const all = <T extends { entryId: string; at: number }>(some: readonly T[], more: readonly T[]) => {
    const known = new Set(some.map(({ entryId }) => entryId))
    return [...some, ...more.filter(({ entryId }) => !known.has(entryId))].sort((a, b) => a.at - b.at)
  }
  return { ...into, stretches: worse, uses: all(into.uses, from.uses), tests: all(into.tests, from.tests) }
}

const airedFor = (stretches: readonly FillStretch[]): number =>
  stretches.reduce((sum, { state, from, to }) => sum + (state === 'full' || to === null ? 0 : to - from), 0)

const closed = (stretches: readonly FillStretch[], at: Instant): FillStretch[] =>
  stretches.map((stretch) => (stretch.to === null ? { ...stretch, to: at } : stretch))

/** Begins a new stretch when its fill state changed. */
function aged(contents: Contents, shape: Shape | undefined, at: Instant): Contents {
  if (shape === undefined || contents.held <= 0) return contents
  const state = fillState(shape, contents.held)
  const last = contents.stretches.at(-1)
  if (last !== undefined && last.to === null && last.state === state) return contents
  return { ...contents, stretches: [...closed(contents.stretches, at), { state, from: at, to: null }] }
}
