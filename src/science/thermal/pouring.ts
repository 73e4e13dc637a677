import {
  type Celsius,
  type CelsiusDegrees,
  celsius,
  failed,
  type Grams,
  grams,
  ok,
  problem,
  type Result,
} from '../../kernel/index.js'
import { sayTemperature } from '../saying.js'
import { warmthOutside } from './blending.js'
import { massOutside, temperatureOutside, tooManyParts } from './checked.js'
import { LIQUID_WATER, THERMAL_LIMITS, type Warmth } from './definition.js'
import { HEAT_OF_FUSION, HEAT_OF_WATER } from './heat.js'

/** How warm to pour. */
export interface Pour {
  readonly pour: Celsius
  /** Pour minus wanted: what the tank and what is in it take (above 0) or give. */
  readonly change: CelsiusDegrees
  /** What each of the things met takes of that, in the order given; they add up to `change`. */
  readonly taken: readonly CelsiusDegrees[]
}

/** A bath that is poured. A gram for a millilitre is near enough: baths are 0–10 % heavier and hold as much less heat. */
const BATH = { low: 10, high: 200_000 }
/** Warmer than this nobody pours onto film. */
const POURED = { low: 0, high: 60 }

/**
 * How warm to pour a solution so that it stands at the wanted temperature once it has met tank, reels and film:
 * pour = T + Σ w (T − Tthing) / m. 500 g into 80 g worth of water at 26 °C, wanted 20 °C: 19.04 °C. Solution
 * 10 g – 200 kg, up to twelve things. Refused when that would be outside 0–60 °C. Source: heat balance.
 */
export function pourAt(wanted: Celsius, solution: Grams, met: readonly Warmth[]): Result<Pour> {
  const refused =
    temperatureOutside('the wanted temperature', wanted, POURED, 'wanted') ??
    massOutside('A solution', solution, BATH, 'solution') ??
    tooManyParts(met.length)
  if (refused) return refused
  for (const [i, thing] of met.entries()) {
    const wrong = warmthOutside(thing, `met[${i}]`)
    if (wrong) return wrong
  }
  const taken = met.map(({ water, temperature }) => (water * (wanted - temperature)) / solution)
  const change = taken.reduce((sum, one) => sum + one, 0)
  const pour = wanted + change
  if (pour < POURED.low || pour > POURED.high) {
    const details = { pour: sayTemperature(pour), wanted: sayTemperature(wanted), most: sayTemperature(POURED.high) }
    return failed(problem('thermal.pour-out-of-reach', details, 'met'))
  }
  return ok({ pour: celsius(pour), change: change as CelsiusDegrees, taken: taken as CelsiusDegrees[] })
}

/** Ice for cooling. */
export interface Ice {
  readonly ice: Grams
  /** Where it goes. In the bath itself its water would thin the bath. */
  readonly place: 'outside-the-bath'
}

/**
 * Ice at 0 °C that cools water, such as the bath that jugs stand in, and melts in doing so:
 * m (T0 − T) / (fusion/4.184 + T). A litre from 24 to 20 °C takes 40.1 g. Water 1 g – 200 kg at 0–99.9 °C, wanted from
 * 0 °C up to its own temperature; else refused. What is lost to the air comes on top.
 */
export function iceFor(water: Grams, from: Celsius, wanted: Celsius): Result<Ice> {
  const refused =
    massOutside('Water', water, { low: 1, high: THERMAL_LIMITS.mass.high }, 'water') ??
    temperatureOutside('the water', from, LIQUID_WATER, 'from') ??
    temperatureOutside('the wanted temperature', wanted, { low: LIQUID_WATER.low, high: from }, 'wanted')
  if (refused) return refused
  // Melted, it still has to warm from 0 °C to the wanted temperature.
  const ice = (water * (from - wanted)) / (HEAT_OF_FUSION.value / HEAT_OF_WATER.value + wanted)
  return ok({ ice: grams(ice), place: 'outside-the-bath' })
}
