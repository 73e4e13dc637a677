import { createHash, type Hash } from 'node:crypto'

export const FORMAT = 'wetside-backup'
export const FORMAT_VERSION = 1

/** First line. */
export interface Head {
  readonly format: typeof FORMAT
  readonly version: typeof FORMAT_VERSION
  readonly dataVersion: number
  /** UTC, ISO 8601. */
  readonly madeAt: string
  readonly tables: readonly string[]
}
export type Value = string | number | null
export type Row = Readonly<Record<string, Value>>
/** One line per row: `t` its table, `r` its columns. Flags are 0 and 1, instants milliseconds since 1970. */
export interface RowLine {
  readonly t: string
  readonly r: Row
}
/** Last line: how many rows there are, and the SHA-256 of all lines before, each with its line feed. */
export interface Tail {
  readonly end: true
  readonly rows: number
  readonly sha256: string
}

/** The running checksum of lines. */
export class LinesSum {
  private readonly hash: Hash = createHash('sha256')
  add(line: string): void {
    this.hash.update(line).update('\n')
  }
  hex(): string {
    return this.hash.digest('hex')
  }
}
