import { type Celsius, nameKey, type Result, type Seconds } from '../../../../../kernel/index.js'
import { type SharedTime, sharedTime, type Tolerance, type Wanted } from '../../../../../planning/index.js'
import { developingTime } from '../../../../../science/index.js'
import type { FilmRecord, TimeRecord } from '../../../../shared/api/index.js'
import { basisOf } from '../../../../shared/figures/index.js'
import { type ChosenRoll, isMixed, type LoadDraft, timesFor, typedWant } from './load.js'

/** The films of a mixed tank, each with the time it wants; null where nothing says it. */
export interface Mixed {
  readonly films: readonly { readonly roll: ChosenRoll; readonly wants: Seconds | null }[]
  /** One time for all; null while a time is missing. */
  readonly shared: Result<SharedTime> | null
}

interface Given {
  readonly load: LoadDraft
  readonly times: readonly TimeRecord[]
  readonly films: readonly FilmRecord[]
  /** The kept time of the plan, by whose developer the others are looked up. */
  readonly time: TimeRecord | null
  readonly temperature: Celsius | null
}

/** How films that want different times come together; null where all are developed alike. */
export function mixedOf(given: Given): Mixed | null {
  const { load } = given
  if (!isMixed(load)) return null
  const films = load.rolls.map((roll) => ({ roll, wants: typedWant(roll) ?? keptWant(roll, given) }))
  const wanted = wantedOf(films, given.films)
  return { films, shared: wanted === null ? null : sharedTime(wanted) }
}

function keptWant(roll: ChosenRoll, { times, time, temperature }: Given): Seconds | null {
  if (time === null) return null
  const kept = timesFor(roll, times).find(
    (one) =>
      nameKey(one.developer) === nameKey(time.developer) &&
      JSON.stringify(one.dilution_parts) === JSON.stringify(time.dilution_parts),
  )
  const basis = kept === undefined ? null : basisOf(kept)
  const own = time === null ? null : basisOf(time)
  if (!basis?.ok || !own?.ok) return null
  const answer = developingTime(basis.value, temperature ?? own.value.reference.temperature)
  return answer.ok ? answer.value.time : null
}

function wantedOf(mixed: Mixed['films'], films: readonly FilmRecord[]): Wanted[] | null {
  const wanted = mixed.flatMap(({ roll, wants }): Wanted[] =>
    wants === null ? [] : [{ name: nameOf(roll), time: wants, tolerance: toleranceOf(roll, films) }],
  )
  return wanted.length === mixed.length ? wanted : null
}

export const nameOf = ({ number, film, index }: ChosenRoll): string =>
  [number, film, index === null ? '' : `at ${index}`].filter(Boolean).join(' ')

/** One that is kept in contrast is judged by the bench, which has the strips; here it bears anything. */
function toleranceOf({ film: name }: ChosenRoll, films: readonly FilmRecord[]): Tolerance {
  const tolerance = films.find((film) => nameKey(film.name) === nameKey(name))?.tolerance
  if (tolerance === undefined) return { shorter: 0.1, longer: 0.1 }
  if (tolerance.in === 'contrast') return { shorter: 1, longer: Number.POSITIVE_INFINITY }
  return { shorter: tolerance.down / 100, longer: tolerance.up / 100 }
}
