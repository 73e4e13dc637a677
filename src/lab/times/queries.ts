import type { TimeRecord as TimeView } from '../../wire/index.js'
import type { Rooms } from '../store.js'
import { viewOf } from './shape.js'

/** Every developing time that stands. */
export const listTimes = async (rooms: Rooms): Promise<{ times: TimeView[] }> => ({
  times: (await rooms.times.all()).map(viewOf),
})
