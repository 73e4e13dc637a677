import type { Celsius, Grams, Millilitres, Seconds } from '../../kernel/index.js'
import type { Origin } from '../development/index.js'

/** Water that flows, °C: at 0 it freezes, and at 100 it boils at sea level. */
export const LIQUID_WATER = { low: 0, high: 99.9 } as const

/** What calculations of warmth accept; outside, they refuse. Temperatures °C, grams, millilitres, seconds. */
export const THERMAL_LIMITS = {
  /** Things that are no water: a room, an empty tank, a jug. */
  surroundings: { low: -40, high: 100 },
  volume: { low: 1, high: 100_000 },
  mass: { low: 0, high: 200_000 },
  parts: { low: 1, high: 12 },
  readings: { low: 2, high: 200 },
  /** Half a minute to a month. */
  constant: { low: 30, high: 2_592_000 },
  time: { low: 0, high: 604_800 },
  /** Give or take of one reading, °C. */
  readingError: { low: 0.01, high: 2 },
} as const

/** A figure with what it rests on. */
export interface Sourced<Value = number> {
  readonly value: Value
  readonly origin: Origin
  readonly source: string
}

/**
 * The simple rule of mixing, the mean by volume, with the error (°C) that the trade's tables state for it below 60 °C.
 * It holds for baths of 18–24 °C out of taps of 10–50 °C; very hot into very cold water is worse, up to 0.26 °C for half
 * and half of 5 and 60 °C. So every mixture says its own error, by `heatBalance`.
 */
export const SIMPLE_RULE = {
  upTo: 60,
  error: 0.15,
  origin: 'law',
  source: 'heat balance of equal heat capacities; its error by IAPWS-IF97',
} as const satisfies { readonly upTo: number; readonly error: number; readonly origin: Origin; readonly source: string }

/** A measured volume of water. */
export interface Poured {
  readonly volume: Millilitres
  readonly temperature: Celsius
}

/** Water, or something that takes as much heat as so much water. */
export interface Warmth {
  readonly water: Grams
  readonly temperature: Celsius
}

/** What tanks and jugs are made of. */
export type VesselMaterial = 'steel' | 'plastic' | 'glass'

/** What surrounds a vessel. */
export type Surroundings = 'air' | 'water'

/** A time constant of warming or cooling, and what it rests on. */
export interface TimeConstant extends Sourced<Seconds> {
  /** Shortest and longest that the readings allow (95 %), or that a guess must allow; null where they leave it open. */
  readonly low: Seconds | null
  readonly high: Seconds | null
}
