import type { TankFollowing } from '../../../../score/index.js'
import type { Running } from '../engine/useRunning.js'

/** What the parts of the screen of a tank are given. */
export interface ScreenPart {
  readonly running: Running
  readonly tank: TankFollowing
  /** Says something in the line above the hold. */
  readonly tell: (sentence: string | null) => void
}
