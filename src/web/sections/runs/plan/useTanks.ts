import { useState } from 'react'
import { EMPTY_PLAN, type PlanDraft } from './draft.js'
import { changedTank, MOST_TANKS, tankDrafts, withOneMore, withoutTank } from './tanks.js'

/** The tanks of a plan that is being typed, and the one whose fields are shown. */
export interface Tanks {
  readonly drafts: readonly PlanDraft[]
  /** Which of them is shown, from 0. */
  readonly place: number
  readonly draft: PlanDraft
  readonly show: (place: number) => void
  /** Changes the tank that is shown, and what all have in common. */
  readonly change: (part: Partial<PlanDraft>) => void
  /** Null where no more fit on one pair of hands. */
  readonly add: (() => void) | null
  /** Takes the one that is shown out of the plan; null where it is the only one. */
  readonly leaveOut: (() => void) | null
}

export function useTanks(whole: PlanDraft, change: (part: Partial<PlanDraft>) => void): Tanks {
  const [wanted, show] = useState(0)
  const drafts = tankDrafts(whole)
  const place = Math.min(wanted, drafts.length - 1)
  const add = () => {
    change(withOneMore(whole, EMPTY_PLAN))
    show(drafts.length)
  }
  const leaveOut = () => {
    change(withoutTank(whole, place))
    show(Math.max(0, place - 1))
  }
  return {
    drafts,
    place,
    draft: drafts[place] ?? whole,
    show,
    change: (part) => change(changedTank(whole, place, part)),
    add: drafts.length < MOST_TANKS ? add : null,
    leaveOut: drafts.length > 1 ? leaveOut : null,
  }
}
