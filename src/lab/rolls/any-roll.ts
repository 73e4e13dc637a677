import type { RollsWanted } from './port.js'

/** A search that leaves nothing out, however many are wanted of it. */
export const ANY_ROLL: Omit<RollsWanted, 'most'> = {
  words: '',
  state: [],
  film: '',
  whose: '',
  process: null,
  due_by: null,
  order_id: null,
  takenInFrom: null,
  takenInBefore: null,
  after: null,
}
