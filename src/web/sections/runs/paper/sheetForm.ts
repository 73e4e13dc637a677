import type { Score, TankState } from '../../../../score/index.js'
import type { PaperDraft, RowDraft, TankDraft } from './draft.js'
import type { PaperReading } from './readDraft.js'
import type { Unit } from './units.js'

/** The form as its parts see it. */
export interface SheetForm {
  readonly score: Score
  readonly draft: PaperDraft
  readonly reading: PaperReading
  readonly units: Unit
  /** The sheet's own day, as it is shown. */
  readonly day: string
  readonly zone: string
  /** Keeping was tried: everything wrong is said. */
  readonly tried: boolean
  /** What screens wrote down before the run went on by paper. */
  readonly byScreen: readonly TankState[]
  readonly change: (part: Partial<PaperDraft>) => void
  readonly changeRow: (tank: string, step: number, part: Partial<RowDraft>) => void
  readonly changeTank: (tank: string, part: Partial<TankDraft>) => void
}
