import type { Instant, UnitSystem } from '../../kernel/index.js'
import type { HandOverFacts, LabelFacts } from '../../wire/index.js'
import type { PaperName } from '../setting/page.js'

/** A sheet of labels on A4 or Letter, or a roll of small ones, one after the other. */
export type LabelLayout = PaperName | 'roll'

/** What labels of bottles are printed from. */
export interface LabelsInput {
  readonly lots: readonly LabelFacts[]
  /** Where this bench is reached; the codes lead there. */
  readonly base: string
  readonly layout: LabelLayout
  /** Places of the first sheet that are used up; of no matter on a roll. */
  readonly used: number
  readonly zone: string
  readonly printedAt: Instant
}

/** What the record of a hand-over is printed from. */
export interface HandOverInput {
  readonly bench: { readonly name: string; readonly zone: string }
  readonly handOver: HandOverFacts
  readonly units: UnitSystem
  readonly paper: PaperName
  readonly printedAt: Instant
}

/** What a bottle's code holds: the page of its lot. */
export const lotAddress = (base: string, code: string): string => `${base}/l/${encodeURIComponent(code)}`
