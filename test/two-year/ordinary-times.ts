import type { RateLaw } from '../../src/science/index.js'
import type { TimeStatement } from '../../src/wire/index.js'
import { blank } from './blank.js'
import type { Chance } from './chance.js'
import type { Developer, Film } from './names.js'
import { typeTemperature, typeTime } from './typed.js'

/** What nature does and no sheet tells: the time at 20 °C and how it goes with warmth. */
interface Nature {
  readonly secondsAtTwenty: number
  readonly coefficient: number
  readonly law: RateLaw
}

/** Times for so many indices: pulled a stop, as rated, pushed one and two stops. */
export function ordinaryTimes(film: Film, developer: Developer, count: number, chance: Chance): TimeStatement[] {
  const nature: Nature = {
    secondsAtTwenty: 60 * chance.number(...developer.minutes),
    coefficient: chance.number(...developer.coefficient),
    law: chance.pick(['exponential', 'arrhenius']),
  }
  const temperatures = temperaturesOfSheet(chance)
  const about = whatIsSaid(developer, nature, temperatures, chance)
  const stops = count === 4 ? [-1, 0, 1, 2] : [-1, 0, 1]
  return stops.map((stop) => {
    const secondsAtTwenty = nature.secondsAtTwenty * (stop < 0 ? 0.8 : 1.35 ** stop)
    const points = pointsOfSheet({ ...nature, secondsAtTwenty }, temperatures, chance)
    return { ...blank(film, developer), ...about, exposure_index: Math.round(film.index * 2 ** stop), points }
  })
}

interface Temperatures {
  readonly unit: 'C' | 'F'
  readonly values: readonly number[]
  /** Rounding of the times, seconds. */
  readonly rounding: number
}

/** How many points sheets have: many give one, few give a whole table. */
const COUNTS = [1, 1, 1, 1, 1, 2, 2, 2, 3, 3, 3, 4, 4, 4, 5, 5, 6, 6, 7, 8]

function temperaturesOfSheet(chance: Chance): Temperatures {
  const unit = chance.happens(0.3) ? 'F' : 'C'
  const count = chance.pick(COUNTS)
  const step = chance.pick(stepsFor(unit, count))
  const usual = unit === 'F' ? 68 : 20
  const first = usual - step * chance.whole(Math.max(0, Math.ceil(count / 2) - 1), Math.floor(count / 2))
  const values = Array.from({ length: count }, (_, place) => first + place * step)
  // Whole minutes on points close together would print slopes that no developer has; such sheets give quarters.
  const span = (step * (count - 1)) / (unit === 'F' ? 1.8 : 1)
  return { unit, values, rounding: chance.pick(count > 1 && span < 4 ? [15, 30] : [15, 30, 60]) }
}

function stepsFor(unit: 'C' | 'F', count: number): readonly number[] {
  if (unit === 'F') return count > 5 ? [2] : [2, 3, 4]
  return count > 5 ? [1, 1.5] : [1, 2]
}

/** The law of nature at the sheet's temperatures, rounded as sheets are, typed as people type. */
function pointsOfSheet(nature: Nature, { unit, values, rounding }: Temperatures, chance: Chance) {
  return values.map((value) => {
    const celsius = unit === 'F' ? (value - 32) / 1.8 : value
    const printed = Math.max(1, Math.round(timeInNature(nature, celsius) / rounding)) * rounding
    return { temperature_c: typeTemperature(value, unit, chance), time_s: typeTime(printed, chance) }
  })
}

/**
 * Seconds at a temperature, written out here and not taken from the program: the bench must not inherit a fault
 * of what it tests. The Arrhenius form is scaled so that it, too, gives K between 15 and 25 °C.
 */
function timeInNature({ secondsAtTwenty, coefficient, law }: Nature, celsius: number): number {
  if (law === 'exponential') return secondsAtTwenty * coefficient ** ((20 - celsius) / 10)
  const inverse = (degrees: number) => 1 / (degrees + 273.15)
  const steepness = Math.log(coefficient) / (inverse(15) - inverse(25))
  return secondsAtTwenty * Math.exp(steepness * (inverse(celsius) - inverse(20)))
}

const AGITATION = [
  'turn for the first 30 s, then 5 s each minute',
  'turn twice each minute',
  '',
  'stand, one turn at half time',
]
const SOURCES: Readonly<Record<TimeStatement['source_origin'], readonly string[]>> = {
  sheet: [
    'sheet of March 2024, page 2',
    'leaflet in the box',
    'table on the “wall”, left column',
    'sheet of 2019; its corner is torn',
  ],
  'own-note': ['red notebook, p. 14', "Ebba's card", 'from memory, after the autumn course'],
  measured: ['strips of May, three temperatures', 'strips, density above base 0.62'],
}

/** All that a sheet says beside its times, the same for every index. */
function whatIsSaid(developer: Developer, nature: Nature, { unit, values }: Temperatures, chance: Chance) {
  const origin = chance.pick(['sheet', 'sheet', 'sheet', 'own-note', 'measured'] as const)
  const own = values.length === 1 && chance.happens(0.35)
  return {
    agitation: chance.pick(AGITATION),
    law: chance.pick(['exponential', 'exponential', 'arrhenius'] as const),
    developer_class: chance.happens(0.7) ? developer.class : ('unknown' as const),
    coefficient: own ? Math.round(nature.coefficient * 10) / 10 : null,
    usable: chance.happens(0.2) ? usableAround(unit, values, chance) : null,
    source_origin: origin,
    source_words: chance.pick(SOURCES[origin]),
    note: chance.happens(0.1) ? 'Thin at the edges last time.\nTurn more gently?' : '',
  }
}

function usableAround(unit: 'C' | 'F', values: readonly number[], chance: Chance) {
  const margin = chance.whole(1, 6)
  const [first, last] = [values[0] as number, values[values.length - 1] as number]
  return {
    from_c: typeTemperature(first - margin, unit, chance),
    to_c: typeTemperature(last + margin, unit, chance),
  }
}
