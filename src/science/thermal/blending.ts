import {
  type Celsius,
  type CelsiusDegrees,
  celsius,
  failed,
  type Millilitres,
  millilitres,
  ok,
  problem,
  type Result,
} from '../../kernel/index.js'
import { sayTemperature } from '../saying.js'
import {
  massOutside,
  nothingToMix,
  surroundingsOutside,
  temperatureOutside,
  tooManyParts,
  volumeOutside,
} from './checked.js'
import { LIQUID_WATER, THERMAL_LIMITS, type Warmth } from './definition.js'
import { heatBalance } from './water.js'

/**
 * Where waters, and things worth so much water, come together: the mean by mass. 270 g at 25 °C and 100 g at 95 °C
 * stand at 43.92 °C. One to twelve parts from −40 to 100 °C, not all of no mass. Source: heat balance of equal heat
 * capacities; {@link heatBalance} says how far off that is.
 */
export function blended(parts: readonly Warmth[]): Result<Celsius> {
  const many = tooManyParts(parts.length)
  if (many) return many
  for (const [i, part] of parts.entries()) {
    const refused = warmthOutside(part, `parts[${i}]`)
    if (refused) return refused
  }
  const mass = parts.reduce((sum, { water }) => sum + water, 0)
  if (mass === 0) return nothingToMix()
  return ok(celsius(parts.reduce((sum, { water, temperature }) => sum + water * temperature, 0) / mass))
}

export const warmthOutside = ({ water, temperature }: Warmth, field: string) =>
  massOutside('Its worth in water', water, THERMAL_LIMITS.mass, `${field}.water`) ??
  surroundingsOutside(temperature, `${field}.temperature`)

/** Hot and cold water that make a volume at a temperature. */
export interface TapMixture {
  readonly hot: Millilitres
  readonly cold: Millilitres
  /** Of the hot water, what only brings the vessel to the wanted temperature; below 0 a warm vessel spares some. */
  readonly forVessel: number
  /** What the simple rule takes too high (above 0) for these two waters, by the balance of enthalpy. */
  readonly off: CelsiusDegrees
}

/** Waters nearer to each other than a thermometer tells, °C, mix to nothing else. */
const APART = 0.1

/** What is wanted of two taps; volumes in mL, temperatures in °C. */
export interface TapsAsked {
  readonly volume: Millilitres
  readonly wanted: Celsius
  readonly hot: Celsius
  readonly cold: Celsius
  /** The jug that it is mixed in; left out, its heat is not counted. */
  readonly vessel?: Warmth
}

/**
 * Hot and cold water for a volume at a wanted temperature: hot = (V (T − Tcold) + w (T − Tvessel)) / (Thot − Tcold),
 * w being the vessel's worth in water. A litre at 20 °C from 12 and 50 °C is 210.5 mL hot and 789.5 mL cold. Volume
 * 1 mL – 100 L; waters 0–99.9 °C. Refused when the wanted temperature is not between what the two can give, with what
 * they can give and what to do.
 */
export function fromTheTaps(asked: TapsAsked): Result<TapMixture> {
  const { volume, wanted, hot, cold, vessel } = asked
  const refused =
    volumeOutside(volume, THERMAL_LIMITS.volume) ??
    temperatureOutside('the wanted temperature', wanted, LIQUID_WATER, 'wanted') ??
    temperatureOutside('the hot water', hot, LIQUID_WATER, 'hot') ??
    temperatureOutside('the cold water', cold, LIQUID_WATER, 'cold') ??
    (vessel === undefined ? null : warmthOutside(vessel, 'vessel'))
  if (refused) return refused
  if (hot - cold < APART)
    return failed(problem('thermal.hot-not-hotter', { hot: sayTemperature(hot), cold: sayTemperature(cold) }, 'hot'))
  const forVessel = vessel === undefined ? 0 : (vessel.water * (wanted - vessel.temperature)) / (hot - cold)
  const share = (volume * (wanted - cold)) / (hot - cold) + forVessel
  // A tap that is as warm as is wanted gives all of it, whatever the last digit of the division says.
  const near = 1e-9 * volume
  if (share < -near || share > volume + near) return outOfReach(asked, share < 0)
  const part = millilitres(Math.min(volume, Math.max(0, share)))
  const rest = millilitres(volume - part)
  const balance = heatBalance([
    { volume: part, temperature: hot },
    { volume: rest, temperature: cold },
  ])
  return balance.ok ? ok({ hot: part, cold: rest, forVessel, off: balance.value.off }) : balance
}

/** What all of the one tap would come to in this vessel, and what to do about it. */
function outOfReach({ volume, wanted, hot, cold, vessel }: TapsAsked, tooCold: boolean): Result<never> {
  const alone = (tap: Celsius) => {
    const { water, temperature } = vessel ?? { water: 0, temperature: tap }
    return sayTemperature((volume * tap + water * temperature) / (volume + water))
  }
  const details = { wanted: sayTemperature(wanted), coolest: alone(cold), warmest: alone(hot) }
  return failed(problem(tooCold ? 'thermal.colder-than-taps' : 'thermal.warmer-than-taps', details, 'wanted'))
}
