import type { NumberCounter, RollRecord, RollsPort } from '../../lab/index.js'
import type { Db } from '../schema.js'
import { findRolls } from './rolls-found.js'
import {
  blockRecord,
  blockRow,
  revisionRecord,
  revisionRow,
  rollEventRecord,
  rollEventRow,
  rollRecord,
  rollRow,
  statementColumns,
} from './rolls-rows.js'

/** Rolls of one bench with their numbers and their way, in one transaction. */
export function rollsRoom(db: Db, bench: string): RollsPort {
  const rolls = () => db.selectFrom('rolls').selectAll().where('bench_id', '=', bench)
  const inOrder = (query: ReturnType<typeof rolls>) => query.orderBy('year').orderBy('n').execute()
  return {
    ...numbersOf(db, bench),
    ...wayOf(db, bench),
    add: (roll) => add(db, bench, roll),
    async roll(id) {
      const row = await rolls().where('id', '=', id).executeTakeFirst()
      return row ? rollRecord(row) : null
    },
    all: async () => (await inOrder(rolls())).map(rollRecord),
    async byNumber(number) {
      const row = await rolls().where('number', '=', number).executeTakeFirst()
      return row ? rollRecord(row) : null
    },
    hold: (ids) => hold(db, bench, ids),
    find: (wanted) => findRolls(db, bench, wanted),
    ofOrders: async (orderIds) =>
      orderIds.length === 0 ? [] : (await inOrder(rolls().where('order_id', 'in', [...orderIds]))).map(rollRecord),
    ofRun: async (runId) => (await inOrder(rolls().where('run_id', '=', runId))).map(rollRecord),
  }
}

type Numbers = Pick<
  RollsPort,
  'nextNumbers' | 'counters' | 'raiseCounter' | 'pattern' | 'setPattern' | 'addBlock' | 'block'
>

function numbersOf(db: Db, bench: string): Numbers {
  return {
    async nextNumbers(kind, year, count) {
      // One statement: whoever counts at the same time waits for the row, and nobody is given a number twice.
      const { last } = await db
        .insertInto('number_counters')
        .values({ bench_id: bench, kind, year, last: count })
        .onConflict((conflict) =>
          conflict
            .columns(['bench_id', 'kind', 'year'])
            .doUpdateSet((e) => ({ last: e('number_counters.last', '+', count) })),
        )
        .returning('last')
        .executeTakeFirstOrThrow()
      return last - count + 1
    },
    counters: () =>
      db
        .selectFrom('number_counters')
        .select(['kind', 'year', 'last'])
        .where('bench_id', '=', bench)
        .where('kind', 'in', ['roll', 'twin'])
        .$narrowType<{ kind: NumberCounter['kind'] }>()
        .orderBy('kind')
        .orderBy('year')
        .execute(),
    async raiseCounter(kind, year, last) {
      await db
        .insertInto('number_counters')
        .values({ bench_id: bench, kind, year, last })
        .onConflict((conflict) =>
          conflict.columns(['bench_id', 'kind', 'year']).doUpdateSet({ last }).where('number_counters.last', '<', last),
        )
        .execute()
    },
    async pattern() {
      const row = await db.selectFrom('number_patterns').selectAll().where('bench_id', '=', bench).executeTakeFirst()
      return row?.pattern ?? null
    },
    async setPattern(pattern) {
      await db
        .insertInto('number_patterns')
        .values({ bench_id: bench, pattern })
        .onConflict((conflict) => conflict.column('bench_id').doUpdateSet({ pattern }))
        .execute()
    },
    async addBlock(block) {
      await db.insertInto('number_blocks').values(blockRow(bench, block)).execute()
    },
    async block(id) {
      const row = await db
        .selectFrom('number_blocks')
        .selectAll()
        .where('bench_id', '=', bench)
        .where('id', '=', id)
        .executeTakeFirst()
      return row ? blockRecord(row) : null
    },
  }
}

type Way = Pick<RollsPort, 'revise' | 'revision' | 'revisions' | 'addEvent' | 'events' | 'batch'>

function wayOf(db: Db, bench: string): Way {
  const revisions = () => db.selectFrom('roll_revisions').selectAll().where('bench_id', '=', bench)
  const events = () => db.selectFrom('roll_events').selectAll().where('bench_id', '=', bench)
  return {
    async revise(roll, revision) {
      await db.insertInto('roll_revisions').values(revisionRow(bench, revision)).execute()
      await db
        .updateTable('rolls')
        .set(statementColumns(roll))
        .where('bench_id', '=', bench)
        .where('id', '=', roll.id)
        .execute()
    },
    async revision(rollId, revision) {
      const row = await revisions().where('roll_id', '=', rollId).where('revision', '=', revision).executeTakeFirst()
      return row ? revisionRecord(row) : null
    },
    async revisions(rollId) {
      const rows = await revisions().where('roll_id', '=', rollId).orderBy('revision').execute()
      return rows.map(revisionRecord)
    },
    async addEvent(event, { state, stateAt, runId, hook }) {
      await db.insertInto('roll_events').values(rollEventRow(bench, event)).execute()
      await db
        .updateTable('rolls')
        .set({ state, state_at: stateAt, run_id: runId, hook })
        .where('bench_id', '=', bench)
        .where('id', '=', event.rollId)
        .execute()
    },
    async events(rollIds) {
      if (rollIds.length === 0) return []
      const rows = await events()
        .where('roll_id', 'in', [...rollIds])
        .orderBy('at')
        .orderBy('id')
        .execute()
      return rows.map(rollEventRecord)
    },
    async batch(batchId) {
      const revised = await revisions().where('batch_id', '=', batchId).orderBy('roll_id').execute()
      const moved = await events().where('batch_id', '=', batchId).orderBy('roll_id').orderBy('id').execute()
      return { revisions: revised.map(revisionRecord), events: moved.map(rollEventRecord) }
    },
  }
}

async function add(db: Db, bench: string, roll: RollRecord): Promise<'added' | 'taken'> {
  const added = await db
    .insertInto('rolls')
    .values(rollRow(bench, roll))
    .onConflict((conflict) => conflict.doNothing())
    .executeTakeFirst()
  if (added.numInsertedOrUpdatedRows === 0n) return 'taken'
  const first = { rollId: roll.id, revision: roll.revision, savedAt: roll.takenInAt, savedBy: roll.takenInBy }
  await db
    .insertInto('roll_revisions')
    .values(revisionRow(bench, { ...first, orderId: roll.orderId, batchId: null, statement: roll.statement }))
    .execute()
  return 'added'
}

async function hold(db: Db, bench: string, ids: readonly string[]): Promise<RollRecord[]> {
  if (ids.length === 0) return []
  // Changing nothing, but taking the rows, and always in one order, so that two who want the same rolls cannot
  // wait for each other.
  const held = new Map<string, RollRecord>()
  for (const id of [...new Set(ids)].sort()) {
    const row = await db
      .updateTable('rolls')
      .set((column) => ({ revision: column.ref('revision') }))
      .where('bench_id', '=', bench)
      .where('id', '=', id)
      .returningAll()
      .executeTakeFirst()
    if (row) held.set(id, rollRecord(row))
  }
  return [...new Set(ids)].flatMap((id) => held.get(id) ?? [])
}
