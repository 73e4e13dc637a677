import type { Celsius, Instant } from '../../kernel/index.js'
import type { DeveloperClass, DeveloperKind, RateLaw, SheetPoint } from '../../science/index.js'

/** What is stated about one film in one developer, as kept. */
export interface TimeStatement {
  readonly film: string
  readonly exposureIndex: number | null
  readonly developer: string
  readonly dilutionParts: readonly number[] | null
  readonly agitation: string
  readonly kind: DeveloperKind
  readonly law: RateLaw
  readonly developerClass: DeveloperClass
  readonly coefficient: number | null
  readonly usable: { readonly from: Celsius; readonly to: Celsius } | null
  readonly window: { readonly from: Celsius; readonly to: Celsius } | null
  readonly points: readonly SheetPoint[]
  readonly sourceWords: string
  readonly sourceOrigin: 'sheet' | 'own-note' | 'measured'
  readonly note: string
}

/** One revision of a developing time. Corrections, removals and undos are new revisions; none is overwritten. */
export interface TimeRecord extends TimeStatement {
  readonly id: string
  readonly revision: number
  readonly savedAt: Instant
  readonly savedBy: string
  readonly removed: boolean
}

export interface TimesPort {
  /** Adds a revision. The first one of an id makes the record; a revision that exists already is a conflict. */
  addRevision(record: TimeRecord): Promise<'added' | 'conflict'>
  /** The newest revision, removed or not. */
  newest(id: string): Promise<TimeRecord | null>
  revision(id: string, revision: number): Promise<TimeRecord | null>
  /** The newest revision of each record that is not removed, by film, developer, index. */
  all(): Promise<TimeRecord[]>
}
