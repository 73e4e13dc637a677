import type { Result } from '../../kernel/index.js'
import type { ColumnTypes } from '../migrations/index.js'
import type { Db } from '../schema.js'

/**
 * What differs between the databases: how transactions begin and wait for each other, how a snapshot is
 * taken, how other processes hear of a commit. Queries are the same for all and know nothing of this.
 */
export interface Engine {
  readonly kind: 'sqlite' | 'postgres'
  readonly types: ColumnTypes
  /** Reads that all see the data of one moment. */
  reading<T>(work: (db: Db) => Promise<T>): Promise<T>
  /** One transaction; writes of a bench happen one after the other. A failed result rolls back. */
  writing<T>(bench: string, work: (db: Db) => Promise<Result<T>>): Promise<Result<T>>
  /** One transaction while nobody else reads or writes: for migrations and restore. */
  alone<T>(work: (db: Db) => Promise<Result<T>>): Promise<Result<T>>
  /** Lines from the data of one moment; a slow reader of them holds nobody up. */
  snapshot(lines: (db: Db) => AsyncIterable<string>): AsyncIterable<string>
  /** Inside a transaction: other processes hear of the bench once it is committed. */
  announce(db: Db, bench: string): Promise<void>
  /** Called with a bench that another process changed, or null when any may have changed. */
  onAnnounced(heard: (bench: string | null) => void): void
  /** Whether an error of the driver says that a row does not fit the tables. */
  isMisfit(thrown: unknown): boolean
  close(): Promise<void>
}

class Undone<T> extends Error {
  constructor(readonly result: Result<T>) {
    super('rolled back')
  }
}

/** Runs `work` in a transaction and commits only an ok result. */
export async function committingOk<T>(db: Db, work: (db: Db) => Promise<Result<T>>): Promise<Result<T>> {
  try {
    return await db.transaction().execute(async (transaction) => {
      const result = await work(transaction)
      if (!result.ok) throw new Undone(result)
      return result
    })
  } catch (thrown) {
    if (thrown instanceof Undone) return thrown.result
    throw thrown
  }
}

/** The code that both drivers put on their errors. */
export function codeOf(thrown: unknown): string {
  const code = (thrown as { code?: unknown } | null)?.code
  return typeof code === 'string' ? code : ''
}

export function reasonOf(thrown: unknown): string {
  const message = thrown instanceof Error ? thrown.message : String(thrown)
  return message || codeOf(thrown) || 'no reason was given'
}
