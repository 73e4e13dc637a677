import { instantText, nameKey } from '../../kernel/index.js'
import type { TodayView } from '../../wire/index.js'
import type { Rooms } from '../store.js'

/** Two hours in a room of some 20 °C: common practice, until the film's own record says better. */
const USUAL_S = 7200
/** More than these hang on no line; the oldest are left to the list of rolls. */
const MOST = 100

const LOOK = {
  words: '',
  film: '',
  whose: '',
  process: null,
  due_by: null,
  order_id: null,
  takenInFrom: null,
  takenInBefore: null,
  after: null,
} as const

/**
 * Rolls that were developed and are to be hung, and those that hang with the moment from which they are ready: by
 * the drying time kept of their film, else two hours after they were hung. Ready first.
 */
export async function dryingOf(rooms: Rooms): Promise<TodayView['drying']> {
  const { rolls } = await rooms.rolls.find({ ...LOOK, state: ['developed', 'hung'], most: MOST })
  if (rolls.length === 0) return []
  const films = (await rooms.films.all()).map(({ statement }) => statement)
  const dryingOfFilm = (name: string): number =>
    films.find((film) => nameKey(film.name) === nameKey(name))?.drying_s ?? USUAL_S
  return rolls
    .map(({ id, number, statement, state, stateAt, hook }) => ({
      id,
      number: number.text,
      film: statement.film,
      hook,
      since: instantText(stateAt),
      ready_at: state === 'hung' ? instantText(stateAt + dryingOfFilm(statement.film) * 1000) : null,
    }))
    .sort((a, b) => order(a).localeCompare(order(b)))
}

/** Those that hang by when they are ready, then those still to be hung by how long they wait. */
const order = ({ ready_at, since }: TodayView['drying'][number]): string => `${ready_at ?? `z${since}`}`
