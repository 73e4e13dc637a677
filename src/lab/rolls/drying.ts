import { instantText, nameKey } from '../../kernel/index.js'
import type { FilmStatement, TodayView } from '../../wire/index.js'
import type { Rooms } from '../store.js'
import { ANY_ROLL } from './any-roll.js'
import type { RollEvent } from './port.js'
import { standingSteps } from './states.js'

type Drying = TodayView['drying'][number]
/** How long a film hangs until it is dry, and who says so. */
type Dries = { readonly s: number; readonly by: NonNullable<Drying['dry_by']> }

/** Two hours in a room of some 20 °C: common practice, until own records say better. */
const USUAL: Dries = { s: 7200, by: 'usual' }
/** More than these hang on no line; the oldest are left to the list of rolls. */
const MOST = 100
/** So many of the last rolls of a film are looked at, and so many of them have to say something. */
const LAST = 12
const SAYING = 3
/** Sleeved sooner was a slip of the finger or done afterwards; later, nobody was there. */
const HANGS_S = { least: 600, most: 172_800 }

/**
 * Rolls that were developed and are to be hung, and those that hang with the moment from which they are ready: by
 * the drying time kept of their film, else by how soon its last rolls were sleeved, else two hours after they were
 * hung. Ready first.
 */
export async function dryingOf(rooms: Rooms): Promise<Drying[]> {
  const { rolls } = await rooms.rolls.find({ ...ANY_ROLL, state: ['developed', 'hung'], most: MOST })
  if (rolls.length === 0) return []
  const hanging = rolls.filter(({ state }) => state === 'hung').map(({ statement }) => statement.film)
  const dries = await driesBy(rooms, hanging)
  return rolls
    .map(({ id, number, statement, state, stateAt, hook }): Drying => {
      const { s, by } = dries.get(nameKey(statement.film)) ?? USUAL
      const hung = state === 'hung'
      return {
        id,
        number: number.text,
        film: statement.film,
        hook,
        since: instantText(stateAt),
        ready_at: hung ? instantText(stateAt + s * 1000) : null,
        dry_by: hung ? by : null,
      }
    })
    .sort((a, b) => order(a).localeCompare(order(b)))
}

/** Those that hang by when they are ready, then those still to be hung by how long they wait. */
const order = ({ ready_at, since }: Drying): string => ready_at ?? `z${since}`

async function driesBy(rooms: Rooms, hanging: readonly string[]): Promise<Map<string, Dries>> {
  const dries = new Map<string, Dries>()
  if (hanging.length === 0) return dries
  const films = (await rooms.films.all()).map(({ statement }) => statement)
  for (const film of hanging)
    if (!dries.has(nameKey(film))) dries.set(nameKey(film), kept(films, film) ?? (await learned(rooms, film)) ?? USUAL)
  return dries
}

function kept(films: readonly FilmStatement[], name: string): Dries | null {
  const s = films.find((film) => nameKey(film.name) === nameKey(name))?.drying_s
  return s == null ? null : { s, by: 'kept' }
}

/** The second shortest that a roll of this film hung before it was sleeved: one that was hurried says nothing. */
async function learned(rooms: Rooms, film: string): Promise<Dries | null> {
  const { rolls } = await rooms.rolls.find({
    ...ANY_ROLL,
    film,
    state: ['sleeved', 'scanned', 'handed-back'],
    most: LAST,
  })
  if (rolls.length < SAYING) return null
  const events = await rooms.rolls.events(rolls.map(({ id }) => id))
  const hung = rolls
    .flatMap(({ id }) => hungFor(events.filter(({ rollId }) => rollId === id)))
    .filter((s) => s >= HANGS_S.least && s <= HANGS_S.most)
    .sort((a, b) => a - b)
  const s = hung[1]
  return s === undefined || hung.length < SAYING ? null : { s, by: 'own-record' }
}

/** From hanging to sleeving, in seconds; nothing where one of the two was not said. */
function hungFor(events: readonly RollEvent[]): number[] {
  const stands = standingSteps(events)
  const [hung, sleeved] = ['hung', 'sleeved'].map((state) => stands.find((event) => event.state === state)?.at)
  return hung === undefined || sleeved === undefined ? [] : [(sleeved - hung) / 1000]
}
