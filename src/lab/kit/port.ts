import type { Celsius, Instant } from '../../kernel/index.js'

export type ThermometerKind = 'spirit' | 'mercury' | 'digital' | 'dial' | 'other'

export interface ThermometerStatement {
  readonly name: string
  readonly kind: ThermometerKind
  readonly scaleLow: Celsius
  readonly scaleHigh: Celsius
  readonly note: string
}

/** One revision of what is said of a thermometer. */
export interface ThermometerRecord extends ThermometerStatement {
  readonly id: string
  readonly revision: number
  readonly savedAt: Instant
  readonly savedBy: string
  readonly removed: boolean
}

/** One check: what it read where the truth was known. Withdrawn checks stay on record and count for nothing. */
export interface ThermometerCheck {
  readonly id: string
  readonly thermometerId: string
  readonly at: Instant
  readonly by: string
  readonly method: 'entered' | 'comparison' | 'ice' | 'boiling' | 'class-set'
  readonly read: Celsius
  readonly true: Celsius
  readonly setId: string | null
  readonly withdrawn: boolean
}

export interface KitPort {
  addRevision(record: ThermometerRecord): Promise<'added' | 'conflict'>
  newest(id: string): Promise<ThermometerRecord | null>
  revision(id: string, revision: number): Promise<ThermometerRecord | null>
  /** Newest revisions that are not removed, by name. */
  all(): Promise<ThermometerRecord[]>
  addCheck(check: ThermometerCheck): Promise<void>
  /** Notes, as a row of its own, that a check counts no more. */
  withdrawCheck(id: string, withdrawalId: string, at: Instant, by: string): Promise<void>
  check(id: string): Promise<ThermometerCheck | null>
  /** All checks of a thermometer (or of every one), oldest first. */
  checks(thermometerId?: string): Promise<ThermometerCheck[]>
}
