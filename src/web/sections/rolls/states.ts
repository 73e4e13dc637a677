import { say, type Writer } from '../../../words/index.js'
import { ROLLS_HERE, type RollSummary } from '../../shared/api/index.js'

export type State = RollSummary['state']

/** The way of a roll, in order, and how it can end before. */
export const WAY: readonly State[] = ['taken-in', 'loaded', 'developed', 'hung', 'sleeved', 'scanned', 'handed-back']
export const MISHAPS: readonly State[] = ['lost', 'ruined']
/** Rolls that are still on the bench. */
export const HERE: readonly State[] = ROLLS_HERE

/** The steps that a roll can still take; none after its end. */
export const stepsFrom = (state: State): readonly State[] => {
  const place = WAY.indexOf(state)
  return place < 0 || state === 'handed-back' ? [] : [...WAY.slice(place + 1), ...MISHAPS]
}

export const stateWord = (state: State, writer: Writer): string => say('rolls.state-word', { state }, writer)
