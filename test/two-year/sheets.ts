import type { TimeStatement } from '../../src/wire/index.js'
import { blank } from './blank.js'
import type { Chance } from './chance.js'
import {
  COLOUR_NEGATIVE,
  COLOUR_NEGATIVES,
  COLOUR_REVERSAL,
  COLOUR_SLIDES,
  DEVELOPERS,
  type Developer,
  FILMS,
  type Film,
  SINGLE_BATH,
} from './names.js'
import { ordinaryTimes } from './ordinary-times.js'
import { typeTemperature, typeTime } from './typed.js'

/** One film in one developer, as its source gives it: a time for each index. */
export interface Sheet {
  readonly number: number
  readonly meant: readonly TimeStatement[]
}

/** How many pairs of film and developer. */
export const SHEETS = 60
const SINGLE_BATHS = 4

/** Sixty pairs in the order in which they come in; no pair twice. */
export function planSheets(chance: Chance): Sheet[] {
  const special = [
    ...chance
      .shuffled(FILMS)
      .slice(0, SINGLE_BATHS)
      .map((film) => [singleBath(film, chance)]),
    ...COLOUR_NEGATIVES.map((film) => [fixed(film, COLOUR_NEGATIVE, 37.8, chance)]),
    ...COLOUR_SLIDES.map((film) => [fixed(film, COLOUR_REVERSAL, 38, chance)]),
  ]
  const pairs = DEVELOPERS.flatMap((developer) => FILMS.map((film) => ({ film, developer })))
  const ordinary = everyFilmAndDeveloper(chance.shuffled(pairs), SHEETS - special.length).map(
    ({ film, developer }, place) => ordinaryTimes(film, developer, 3 + (place % 3 === 2 ? 1 : 0), chance),
  )
  return chance.shuffled([...special, ...ordinary]).map((meant, number) => ({ number, meant }))
}

interface Pair {
  readonly film: Film
  readonly developer: Developer
}

/** So many pairs, those first that bring in a film not seen before: no name goes unused. */
function everyFilmAndDeveloper(pairs: readonly Pair[], count: number): Pair[] {
  const firsts = pairs.filter(({ film }, place) => pairs.findIndex((other) => other.film === film) === place)
  return [...firsts, ...pairs.filter((pair) => !firsts.includes(pair))].slice(0, count)
}

/** Cold slows the fixing more than the developing, so its times grow with warmth. One to four points. */
function singleBath(film: Film, chance: Chance): TimeStatement {
  const count = chance.whole(1, 4)
  const first = chance.whole(22, 24)
  let time = 60 * chance.whole(5, 7)
  const points = Array.from({ length: count }, (_, place) => {
    if (place > 0) time += chance.pick([0, 15, 30])
    return { temperature_c: typeTemperature(first + place, 'C', chance), time_s: typeTime(time, chance) }
  })
  return {
    ...blank(film, SINGLE_BATH),
    agitation: 'turn four times each minute',
    points,
    source_words: 'label of the tin',
  }
}

/** One time at one temperature; the window stated or left to what is usual. */
function fixed(film: Film, developer: Developer, temperature: number, chance: Chance): TimeStatement {
  const half = chance.pick([0.15, 0.25, 0.3])
  const stated = { from_c: temperature - half, to_c: temperature + half }
  return {
    ...blank(film, developer),
    agitation: 'turn four times every 30 s',
    points: [{ temperature_c: temperature, time_s: typeTime(chance.pick([180, 195, 360, 390]), chance) }],
    window: chance.happens(0.6) ? stated : null,
    source_words: 'leaflet in the box',
  }
}
