import type { ThermometerStatement } from '../../src/wire/index.js'
import { yearsSinceStart } from './calendar.js'
import type { Chance } from './chance.js'

/** A thermometer of the bench: what is said of it, and what nobody knows. */
export interface Instrument {
  readonly statement: ThermometerStatement
  /** Finest step that is read off it, °C. */
  readonly division: number
  /** Hidden: how much it reads high on the first day, and how much more each year, °C. */
  readonly offset: number
  readonly drift: number
}

type Shape = readonly [ThermometerStatement['kind'], low: number, high: number, division: number, drift: number]

const SPIRIT: Shape = ['spirit', -10, 50, 0.5, 0.15]
const MERCURY: Shape = ['mercury', -5, 105, 0.1, 0.03]
const DIGITAL: Shape = ['digital', -40, 120, 0.1, 0.25]
const DIAL: Shape = ['dial', 10, 60, 0.5, 0.6]

const NAMES: readonly (readonly [string, Shape])[] = [
  ['Reference, in its case', MERCURY],
  ['Spirit over the sink', SPIRIT],
  ['Spirit, blue cap', SPIRIT],
  ['Spirit, red cap (Jörgen’s)', SPIRIT],
  ["Spirit 'short'; cracked foot", SPIRIT],
  ['Dial, long stem', DIAL],
  ['Dial “kitchen”', DIAL],
  ['Dial by the window 🌡️', DIAL],
  ['Digital probe 1', DIGITAL],
  ['Digital probe 2', DIGITAL],
  ['Mercury, old', MERCURY],
  ['Mercury for the colour line', MERCURY],
]

/** The first one is trusted: it was compared elsewhere, and it hardly drifts. */
export const REFERENCE = 0

/** Twelve thermometers with their hidden errors. */
export const planInstruments = (chance: Chance): readonly Instrument[] =>
  NAMES.map(([name, [kind, low, high, division, drift]], place) => ({
    statement: {
      name,
      kind,
      scale_low_c: low,
      scale_high_c: high,
      note: place === REFERENCE ? 'Not for daily use.' : '',
    },
    division,
    offset: place === REFERENCE ? 0 : chance.number(-0.9, 0.9),
    drift: place === REFERENCE ? 0 : chance.number(-drift, drift),
  }))

/** What it shows for a truth at a moment, read to its division. */
export function showsAt({ offset, drift, division }: Instrument, truth: number, at: number): number {
  const shown = truth + offset + drift * yearsSinceStart(at)
  return Number((Math.round(shown / division) * division).toFixed(2))
}
