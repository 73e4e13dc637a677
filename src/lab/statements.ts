import { failed, instantText, ok, type Problem, problem, type Result } from '../kernel/index.js'
import type { Context } from './context.js'
import { correct, keepFirst, type Revised, type RevisionPort, remove, revise, undo } from './revisions.js'
import type { Change, Rooms } from './store.js'

/** A record whose revisions are what was stated of it. */
export interface Stated<S> extends Revised {
  readonly statement: S
}

export interface StatementsPort<S> extends RevisionPort<Stated<S>> {
  /** The newest revision of each that is not removed, oldest record first. */
  all(): Promise<Stated<S>[]>
  /** The newest revision of each of these, removed ones too, in no order. */
  newestOf(ids: readonly string[]): Promise<Stated<S>[]>
}

/** What every view of such a record begins with. */
export const standingOf = <S>(record: Stated<S>) => ({
  id: record.id,
  revision: record.revision,
  saved_at: instantText(record.savedAt),
  removed: record.removed,
})

/** What is particular about one kind of record. */
interface KindOfRecord<S> {
  /** What a problem calls it. */
  readonly what: string
  readonly feed: Change['kind']
  readonly port: (rooms: Rooms) => StatementsPort<S>
  /** Null, or why this cannot be stated beside the others that stand. */
  readonly wrong: (statement: S, others: readonly Stated<S>[]) => Problem | null
}

/** Keep, correct, remove and undo of records that are what was stated of them. */
export function statementCommands<S extends object>(kind: KindOfRecord<S>) {
  const told = async (context: Context, rooms: Rooms, done: Result<Stated<S>>): Promise<Result<Stated<S>>> => {
    if (done.ok) await rooms.feed.tell({ kind: kind.feed, subject: done.value.id }, context.clock.now())
    return done
  }
  const checked = async (rooms: Rooms, statement: S, except: string | null): Promise<Result<S>> => {
    const others = (await kind.port(rooms).all()).filter(({ id }) => id !== except)
    const wrong = kind.wrong(statement, others)
    return wrong === null ? ok(statement) : failed(wrong)
  }
  return {
    async keep(context: Context, rooms: Rooms, statement: S) {
      const sound = await checked(rooms, statement, null)
      return sound.ok ? told(context, rooms, ok(await keepFirst(context, kind.port(rooms), { statement }))) : sound
    },
    async correct(context: Context, rooms: Rooms, id: string, seen: number, statement: S) {
      const sound = await checked(rooms, statement, id)
      if (!sound.ok) return sound
      const next = correct<Stated<S>>(kind.what, { statement } as Omit<Stated<S>, keyof Revised>)
      return told(context, rooms, await revise(context, kind.port(rooms), kind.what, id, seen, next))
    },
    async remove(context: Context, rooms: Rooms, id: string, seen: number) {
      const next = remove<Stated<S>>(kind.what)
      return told(context, rooms, await revise(context, kind.port(rooms), kind.what, id, seen, next))
    },
    async undo(context: Context, rooms: Rooms, id: string, seen: number) {
      const port = kind.port(rooms)
      const done = await revise(context, port, kind.what, id, seen, undo(port))
      if (!done.ok || done.value.removed) return told(context, rooms, done)
      const sound = await checked(rooms, done.value.statement, id)
      return sound.ok ? told(context, rooms, done) : sound
    },
    async standing(rooms: Rooms, id: string): Promise<Result<Stated<S>>> {
      const record = await kind.port(rooms).newest(id)
      if (record === null) return failed(problem('record.not-found', { what: kind.what, id }))
      return record.removed ? failed(problem('record.removed', { what: kind.what })) : ok(record)
    },
  }
}
