import {
  type Celsius,
  failed,
  type Grams,
  grams,
  type Millilitres,
  ok,
  type Ratio,
  type Result,
  readMass,
  readRatio,
  readTemperature,
  readVolume,
  type UnitSystem,
} from '../../kernel/index.js'
import { typed, usage } from '../output.js'

/** An option that a question cannot do without; the example is how to type it. */
export const needed = (flag: string, like: string, text: string | undefined): Result<string> =>
  text === undefined ? failed(usage(`--${flag} is missing, such as --${flag} ${like}.`)) : ok(text)

export function temperatureOf(flag: string, text: string | undefined, system: UnitSystem): Result<Celsius> {
  const given = needed(flag, '20C', text)
  return given.ok ? typed(readTemperature(given.value, { system })) : given
}

export function volumeOf(flag: string, text: string | undefined, system: UnitSystem): Result<Millilitres> {
  const given = needed(flag, '500mL', text)
  return given.ok ? typed(readVolume(given.value, { system })) : given
}

export function partsOf(flag: string, text: string | undefined): Result<Ratio['parts']> {
  const given = needed(flag, '1+9', text)
  if (!given.ok) return given
  const ratio = typed(readRatio(given.value))
  return ratio.ok ? ok(ratio.value.parts) : ratio
}

export interface TypedThing {
  readonly mass_g: Grams
  readonly temperature_c: Celsius
  readonly material?: 'steel' | 'plastic' | 'glass' | 'film'
}

/** `steel 240g 18C`, `80g 26C`, `500mL 20C`: a thing that takes heat. A millilitre of water counts as a gram. */
export function thingOf(text: string, system: UnitSystem): Result<TypedThing> {
  const cut = text.trim().match(/^(?:(steel|plastic|glass|film)\s+)?(\S+)\s+(\S+)$/i)
  if (!cut)
    return failed(usage(`“${text}” is no thing with its warmth. Write it like “steel 240g 18C” or “300mL 20C”.`))
  const [, material, amount, warmth] = cut as unknown as [string, string | undefined, string, string]
  const mass = /l$/i.test(amount) ? volumeAsMass(amount, system) : typed(readMass(amount, { system }))
  if (!mass.ok) return mass
  const temperature = typed(readTemperature(warmth, { system }))
  if (!temperature.ok) return temperature
  const of = material === undefined ? {} : { material: material.toLowerCase() as NonNullable<TypedThing['material']> }
  return ok({ mass_g: mass.value, temperature_c: temperature.value, ...of })
}

function volumeAsMass(text: string, system: UnitSystem): Result<Grams> {
  const volume = typed(readVolume(text, { system }))
  return volume.ok ? ok(grams(volume.value)) : volume
}
