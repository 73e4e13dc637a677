import { sql } from 'kysely'
import type { Demand, LedgerEntry, Leg, Lot, LotsWanted, ShelfPort } from '../../lab/index.js'
import type { Db } from '../schema.js'
import type { ShelfEntryRow, ShelfLegRow } from '../schema-shelf.js'
import { inPieces } from './pieces.js'
import { searchedFor } from './searched.js'
import { containerRecord, containerRow, entryRecord, entryRow, legRows, lotRecord, lotRow } from './shelf-rows.js'
import { statementsRoom } from './statements.js'

/** The shelf of one bench in one transaction. */
export function shelfRoom(db: Db, bench: string): ShelfPort {
  return { ...containersOf(db, bench), ...lotsOf(db, bench), ...ledgerOf(db, bench) }
}

type Containers = Pick<ShelfPort, 'containers' | 'addContainer' | 'setRoom' | 'container' | 'all' | 'some' | 'holding'>

function containersOf(db: Db, bench: string): Containers {
  const rows = () => db.selectFrom('containers').selectAll().where('bench_id', '=', bench)
  return {
    containers: statementsRoom(db, bench, 'container'),
    async addContainer(container) {
      await db.insertInto('containers').values(containerRow(bench, container)).execute()
    },
    async setRoom(id, room) {
      await db.updateTable('containers').set({ room }).where('bench_id', '=', bench).where('id', '=', id).execute()
    },
    async container(id) {
      const row = await rows().where('id', '=', id).executeTakeFirst()
      return row ? containerRecord(row) : null
    },
    all: async () => (await rows().execute()).map(containerRecord),
    some: async (ids) => (await inPieces(ids, (some) => rows().where('id', 'in', some).execute())).map(containerRecord),
    holding: async (lotId) => (await rows().where('lot_id', '=', lotId).execute()).map(containerRecord),
  }
}

type Lots = Pick<ShelfPort, 'addLot' | 'lot' | 'lots' | 'lotByCode' | 'findLots'>

function lotsOf(db: Db, bench: string): Lots {
  const rows = () => db.selectFrom('lots').selectAll().where('bench_id', '=', bench)
  return {
    async addLot(lot, product) {
      const added = await db
        .insertInto('lots')
        .values(lotRow(bench, lot, product))
        .onConflict((conflict) => conflict.doNothing())
        .executeTakeFirst()
      return added.numInsertedOrUpdatedRows === 0n ? 'taken' : 'added'
    },
    async lot(id) {
      const row = await rows().where('id', '=', id).executeTakeFirst()
      return row ? lotRecord(row) : null
    },
    lots: async (ids) => (await inPieces(ids, (some) => rows().where('id', 'in', some).execute())).map(lotRecord),
    async lotByCode(code) {
      const row = await rows().where('code', '=', code).executeTakeFirst()
      return row ? lotRecord(row) : null
    },
    findLots: (wanted) => findLots(db, bench, wanted),
  }
}

async function findLots(
  db: Db,
  bench: string,
  { words, after, most }: LotsWanted,
): Promise<{ lots: Lot[]; found: number }> {
  const query = db
    .selectFrom('lots')
    .where('bench_id', '=', bench)
    .where((e) => e.and(searchedFor(words)))
  const { found } = await query.select((e) => e.fn.countAll().as('found')).executeTakeFirstOrThrow()
  const page =
    after === null
      ? query
      : query.where((e) =>
          e.or([e('mixed_at', '<', after.mixedAt), e.and([e('mixed_at', '=', after.mixedAt), e('id', '<', after.id)])]),
        )
  const rows = await page.selectAll().orderBy('mixed_at', 'desc').orderBy('id', 'desc').limit(most).execute()
  return { lots: rows.map(lotRecord), found: Number(found) }
}

type Ledger = Pick<ShelfPort, 'post' | 'entry' | 'entriesOf' | 'entriesOfLots' | 'testsOfProducts' | 'usesOfRun'>

function ledgerOf(db: Db, bench: string): Ledger {
  const entries = () => db.selectFrom('shelf_entries').selectAll().where('bench_id', '=', bench)
  const legs = () => db.selectFrom('shelf_legs').selectAll().where('bench_id', '=', bench)
  /** Entries of a kind that were not taken back. */
  const standing = (kind: LedgerEntry['told']['kind']) =>
    db
      .selectFrom('shelf_entries as entry')
      .where('entry.bench_id', '=', bench)
      .where('entry.kind', '=', kind)
      .where((e) =>
        e.not(
          e.exists(
            e
              .selectFrom('shelf_entries as back')
              .select('back.id')
              .whereRef('back.bench_id', '=', 'entry.bench_id')
              .whereRef('back.retracts', '=', 'entry.id'),
          ),
        ),
      )
  const whole = async (rows: readonly ShelfEntryRow[]) => {
    const ids = rows.map(({ id }) => id)
    return joined(
      rows,
      await inPieces(ids, (some) => legs().where('entry_id', 'in', some).orderBy('position').execute()),
    )
  }
  const by = async (column: 'container_id' | 'lot_id', ids: readonly string[]) => {
    const found = await inPieces(ids, (some) => legs().select('entry_id').where(column, 'in', some).execute())
    const entryIds = [...new Set(found.map(({ entry_id }) => entry_id))]
    const rows = await inPieces(entryIds, (some) => entries().where('id', 'in', some).execute())
    return whole(rows)
  }
  return {
    async post({ entry, demands }) {
      // Always in one order, so that two who want the same bottles cannot wait for each other.
      for (const leg of [...entry.legs].sort((a, b) => (a.containerId < b.containerId ? -1 : 1)))
        if (!(await book(db, bench, leg, entry.at, demands[leg.containerId] ?? {})))
          return { refusedBy: leg.containerId }
      await db.insertInto('shelf_entries').values(entryRow(bench, entry)).execute()
      const rows = legRows(bench, entry)
      if (rows.length > 0) await db.insertInto('shelf_legs').values(rows).execute()
      return 'posted'
    },
    async entry(id) {
      const row = await entries().where('id', '=', id).executeTakeFirst()
      return row ? ((await whole([row]))[0] ?? null) : null
    },
    entriesOf: (containerIds) => by('container_id', containerIds),
    entriesOfLots: (lotIds) => by('lot_id', lotIds),
    async testsOfProducts(productIds) {
      const found = await inPieces(productIds, (some) =>
        standing('tested')
          .innerJoin('shelf_legs as leg', (join) =>
            join.onRef('leg.bench_id', '=', 'entry.bench_id').onRef('leg.entry_id', '=', 'entry.id'),
          )
          .innerJoin('lots as lot', (join) =>
            join.onRef('lot.bench_id', '=', 'leg.bench_id').onRef('lot.id', '=', 'leg.lot_id'),
          )
          .where('lot.product_id', 'in', some)
          .select(['entry.id as id', 'lot.product_id as product_id'])
          .execute(),
      )
      const productOf = new Map(found.map((one) => [one.id, one.product_id]))
      const rows = await inPieces([...productOf.keys()], (some) => entries().where('id', 'in', some).execute())
      return (await whole(rows)).map((entry) => ({ productId: productOf.get(entry.id) as string, entry }))
    },
    usesOfRun: async (runId) =>
      // What was told is written by `JSON.stringify`, and an id holds nothing that it would write otherwise.
      whole(await standing('used').where('entry.told', 'like', `%"run_id":"${runId}"%`).selectAll('entry').execute()),
  }
}

/** Looks and changes in one statement: nobody can come in between and take the same last drop. */
async function book(db: Db, bench: string, leg: Leg, at: number, demand: Demand): Promise<boolean> {
  const changed = await db
    .updateTable('containers')
    .set((e) => ({
      held: e('held', '+', leg.held),
      basis: e('basis', '+', leg.basis),
      worked: e('worked', '+', leg.worked),
      met: e('met', '+', leg.met),
      seq: e('seq', '+', 1),
      changed_at: at,
      lot_id: sql<string | null>`case when held + ${leg.held} <= 0 then null else ${leg.lotId} end`,
    }))
    .where('bench_id', '=', bench)
    .where('id', '=', leg.containerId)
    .where((e) => e.or([e('lot_id', 'is', null), e('lot_id', '=', leg.lotId)]))
    .where((e) => e(e('held', '+', leg.held), '>=', 0))
    .where((e) => e.or([e('room', 'is', null), e(e('held', '+', leg.held), '<=', e.ref('room'))]))
    .where((e) => e(e('basis', '+', leg.basis), '>=', 0))
    .where((e) => e(e('worked', '+', leg.worked), '>=', 0))
    .where((e) => e(e('met', '+', leg.met), '>=', 0))
    .$if(demand.carries !== undefined, (q) =>
      q.where((e) => e(e('worked', '+', leg.worked), '<=', demand.carries as number)),
    )
    .$if(demand.seen !== undefined, (q) => q.where('seq', '=', demand.seen as number))
    .executeTakeFirst()
  return changed.numUpdatedRows === 1n
}

function joined(rows: readonly ShelfEntryRow[], legs: readonly ShelfLegRow[]): LedgerEntry[] {
  const byEntry = new Map<string, ShelfLegRow[]>()
  for (const leg of legs) byEntry.set(leg.entry_id, [...(byEntry.get(leg.entry_id) ?? []), leg])
  return [...rows]
    .sort((a, b) => a.at - b.at || (a.id < b.id ? -1 : 1))
    .map((row) => entryRecord(row, byEntry.get(row.id) ?? []))
}
