import type { TankPlan } from '../plan/definition.js'
import { pourBefore } from '../plan/lay-out.js'
import { isBath } from '../recipe/kinds.js'
import type { WrittenStep } from './definition.js'

export type Side = 'in' | 'out' | 'done'

/** A moment that the sheet has a box for. */
export interface SheetMoment {
  readonly index: number
  readonly side: Side
  /** `Developer in`. */
  readonly name: string
  /** Where the plan has it, seconds from the run's zero. */
  readonly planned: number
  /** Inside a bath, whose clock goes on: nothing waits for it. */
  readonly inside: boolean
}

/** Every moment of a tank's sheet in the order in which they have to come. Those inside a bath come after its pour. */
export function sheetMoments({ tank, laid }: TankPlan): SheetMoment[] {
  return laid.flatMap(({ index, step, in: start, out }): SheetMoment[] => {
    const at = (side: Side, second: number, inside = false): SheetMoment => ({
      index,
      side,
      name: step.name,
      planned: tank.offset + second,
      inside,
    })
    if (!isBath(step)) return [at('done', out, step.within !== null)]
    return [at('in', start - pourBefore(step)), at('out', out)]
  })
}

const BOX = { in: 'inAt', out: 'outAt', done: 'doneAt' } as const
export const boxOf = (written: WrittenStep | undefined, side: Side) => written?.[BOX[side]] ?? null
