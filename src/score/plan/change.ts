import type { Bath } from '../recipe/definition.js'
import { isBath, isRefillOf } from '../recipe/kinds.js'
import type { Job, Laid } from './definition.js'

/** A bath laid out in time. */
export type LaidBath = Laid & { readonly step: Bath }

const isBathIn = (one: Laid): one is LaidBath => isBath(one.step) && !one.skipped

/** The bath that was in the tank before the step at this place; null for the first. */
export const bathBefore = (laid: readonly Laid[], index: number): LaidBath | null =>
  laid.slice(0, index).findLast(isBathIn) ?? null

/** What a bath change does, for whoever names it. */
export interface Change {
  /** Into an empty tank; fresh water or solution after the same; or one bath after another. */
  readonly how: 'in' | 'refill' | 'change'
  readonly name: string
  /** The bath that is drained first, and its name; empty where the tank is. */
  readonly drained: LaidBath | null
  readonly before: string
}

/** A change as its job does it: it drains the bath before where that belongs to the job. */
export function changeOf(laid: readonly Laid[], { index, parts }: Job): Change {
  const step = laid[index]?.step
  const drained = parts.some(({ part }) => part === 'drain') ? bathBefore(laid, index) : null
  const again = drained !== null && step !== undefined && isBath(step) && isRefillOf(drained.step, step)
  return {
    how: drained === null ? 'in' : again ? 'refill' : 'change',
    name: step?.name ?? '',
    drained,
    before: drained?.step.name ?? '',
  }
}
