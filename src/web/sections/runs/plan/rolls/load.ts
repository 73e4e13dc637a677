import { nameKey, readDuration, type Seconds } from '../../../../../kernel/index.js'
import { type RollToLoad, type StopRemark, stopOf, throughList } from '../../../../../planning/index.js'
import type { Recipe } from '../../../../../score/index.js'
import type { PlanRunInput, RollSummary, TimeRecord } from '../../../../shared/api/index.js'

/** A roll of the register that was chosen for a tank. */
export interface ChosenRoll extends RollToLoad {
  readonly id: string
  readonly film: string
  /** The index it is developed as. */
  readonly index: number | null
  /** Developed for a contrast of its own, of which no kept time knows. */
  readonly ownContrast: boolean
  /** Which reel it goes onto, from 1. */
  readonly reel: number
  /** The time it wants, as it was typed; empty where a kept time says it. */
  readonly wants: string
}

/** What goes into one tank, as far as it comes from the register and the kit. */
export interface LoadDraft {
  readonly rolls: readonly ChosenRoll[]
  /** Why own film goes through a list that it is not made for. */
  readonly because: string
  readonly confirmed: readonly StopRemark[]
  /** One time for mixed films, in place of the developing time above. */
  readonly shared: boolean
  /** Id of a tank of the kit; empty where none is named. */
  readonly vessel: string
}

export const EMPTY_LOAD: LoadDraft = { rolls: [], because: '', confirmed: [], shared: false, vessel: '' }

/** A roll as it was found, on the reel that is next. */
export const chosenOf = (roll: RollSummary, reel: number): ChosenRoll => ({
  id: roll.id,
  number: roll.number,
  film: roll.film,
  index: roll.treatment.as === 'index' ? roll.treatment.index : roll.exposure_index,
  ownContrast: roll.treatment.as === 'contrast',
  process: roll.process,
  whose: roll.whose,
  remarks: roll.remarks,
  reel,
  wants: '',
})

/** What stands against the rolls going through this list: one sentence for each that is stopped. */
export const stopsOf = ({ rolls, because, confirmed }: LoadDraft, list: Recipe['process']): string[] =>
  rolls.flatMap((roll) => {
    const process = throughList(roll, list, because)
    if (!process.ok) return [process.problem.sentence]
    const stop = stopOf(roll, confirmed)
    return stop.ok ? [] : [stop.problem.sentence]
  })

/** Whether some own film goes through a list that it is not made for, so that a reason is asked for. */
export const wantsReason = ({ rolls }: LoadDraft, list: Recipe['process']): boolean =>
  rolls.some((roll) => roll.whose === null && !throughList(roll, list, '').ok)

/** What has to be confirmed of the rolls that were chosen. */
export const stopRemarks = ({ rolls }: LoadDraft): StopRemark[] =>
  (['carbon-backing', 'infrared'] as const).filter((remark) => rolls.some(({ remarks }) => remarks.includes(remark)))

/** Whether the rolls are not all developed alike. */
export function isMixed({ rolls }: LoadDraft): boolean {
  const [first] = rolls
  return rolls.some(
    (roll) =>
      first !== undefined &&
      (nameKey(roll.film) !== nameKey(first.film) ||
        roll.index !== first.index ||
        roll.ownContrast !== first.ownContrast),
  )
}

/** The kept times of the film and index that a roll is developed as. */
export const timesFor = ({ film, index, ownContrast }: ChosenRoll, times: readonly TimeRecord[]): TimeRecord[] =>
  ownContrast ? [] : times.filter((time) => nameKey(time.film) === nameKey(film) && time.exposure_index === index)

export const typedWant = ({ wants }: ChosenRoll): Seconds | null => {
  const reading = wants.trim() === '' ? null : readDuration(wants)
  return reading?.kind === 'read' ? reading.value : null
}

type AskedTank = PlanRunInput['tanks'][number]

/** The rolls as the bench is asked to put them onto reels. */
export const askedReels = ({ rolls }: LoadDraft): AskedTank['on_reels'] =>
  rolls.map((roll) => {
    const wants = typedWant(roll)
    return { roll_id: roll.id, reel: roll.reel, ...(wants === null ? {} : { wants_s: wants }) }
  })

/** What else the bench is told of the load; nothing of what was not said. */
export const askedLoad = (load: LoadDraft): Pick<AskedTank, 'vessel_id' | 'crosses_because' | 'confirmed'> => ({
  ...(load.vessel === '' ? {} : { vessel_id: load.vessel }),
  ...(load.because.trim() === '' ? {} : { crosses_because: load.because.trim() }),
  ...(load.confirmed.length === 0 ? {} : { confirmed: [...load.confirmed] }),
})
