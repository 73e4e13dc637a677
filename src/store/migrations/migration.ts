import type { Kysely, RawBuilder } from 'kysely'

/** What the column types are called in each engine. Text sorts by code points in both. */
export interface ColumnTypes {
  readonly text: RawBuilder<unknown>
  readonly integer: RawBuilder<unknown>
  /** Milliseconds since 1970. */
  readonly instant: RawBuilder<unknown>
  readonly real: RawBuilder<unknown>
  /** Whole microlitres, milligrams, millionths of a roll: more than 32 bits hold. */
  readonly amount: RawBuilder<unknown>
  /** Said after the columns of a table. */
  readonly tableEnd: RawBuilder<unknown>
}

/**
 * One step of the data, forward only. It sees the data as the step before left it, so it may not use the
 * types of today's schema. A landed one never changes (`landed.json` holds its checksum).
 */
export interface Migration {
  readonly name: string
  up(db: Kysely<unknown>, types: ColumnTypes): Promise<void>
}
