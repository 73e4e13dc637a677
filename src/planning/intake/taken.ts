import { type Day, nameKey, type PartialDay } from '../../kernel/index.js'
import type { FilmFormat } from '../../science/index.js'

/** The chemistry that film is made for. */
export type TakenProcess = 'black-and-white' | 'colour-negative' | 'colour-reversal'
/** Formats that rolls are taken in with. */
export type TakenFormat = Exclude<FilmFormat, '18x24cm'>
export type TakenRemark = 'found' | 'expired' | 'infrared' | 'carbon-backing' | 'chromogenic'

/** What was asked for: as usual, as if it had another index, or for a contrast of one's own. */
export type Wanted =
  | { readonly as: 'normal' }
  | { readonly as: 'index'; readonly index: number }
  | { readonly as: 'contrast'; readonly contrast: number }

/** A roll as it is taken in, once all that was written of it is read. Fields as `RollStatement` of the interface. */
export interface TakenRoll {
  readonly film: string
  readonly process: TakenProcess
  readonly format: TakenFormat
  /** Frames of a 135 length; null for 36 and for every other format. */
  readonly frames: number | null
  readonly sheets: number
  /** Null for one's own. */
  readonly whose: string | null
  readonly exposure_index: number | null
  readonly treatment: Wanted
  readonly exposed: PartialDay | null
  readonly expired_since: PartialDay | null
  readonly remarks: TakenRemark[]
  readonly due: Day | null
  readonly note: string
}

/** What the bench knows while it reads: the day it is there, and the chemistry of films that were here before. */
export interface Known {
  readonly today: Day
  readonly processOf: (film: string) => TakenProcess | undefined
}

/** What is known on a day at a bench that keeps these films; capitals do not matter in a film's name. */
export function knownOf(
  today: Day,
  films: readonly { readonly name: string; readonly process: TakenProcess }[],
): Known {
  const byName = new Map(films.map(({ name, process }) => [nameKey(name), process]))
  return { today, processOf: (film) => byName.get(nameKey(film)) }
}
