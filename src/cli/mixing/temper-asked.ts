import { all, failed, ok, type Result, readDuration, readTemperature, type UnitSystem } from '../../kernel/index.js'
import type { TemperQuestion } from '../../wire/index.js'
import { isJson, jsonIn } from '../asked.js'
import { listText, readingsIn } from '../lists.js'
import { numbersOf } from '../options.js'
import { typed, usage } from '../output.js'
import { temperatureOf, thingOf, volumeOf } from './typed.js'

/** How a question about warm and cold is typed. */
export interface TemperOptions {
  readonly for?: TemperQuestion['ask']
  readonly want?: string
  readonly volume?: string
  readonly hot?: string
  readonly cold?: string
  readonly thing?: readonly string[]
  readonly from?: string
  readonly around?: string
  readonly constant?: string
  readonly material?: 'steel' | 'plastic' | 'glass'
  readonly in?: 'air' | 'water'
  readonly readingError?: string
  readonly after?: string
  readonly at?: string
  readonly bath?: readonly string[]
}

/** The question out of options and readings, or whole out of JSON. */
export async function temperAsked(
  file: string | undefined,
  options: TemperOptions,
  system: UnitSystem,
): Promise<Result<TemperQuestion>> {
  const readings = file === undefined ? ok('') : await listText(file)
  if (!readings.ok) return readings
  if (isJson(readings.value)) return jsonIn(readings.value, 'the question', 'temper-question')
  switch (options.for) {
    case undefined:
      return failed(usage('Say what it is about, such as --for taps, or give the question as JSON.'))
    case 'taps':
      return taps(options, system)
    case 'together':
      return withThings(options, system, (things) => ok({ ask: 'together', things }))
    case 'pour':
      return pour(options, system)
    case 'ice':
      return ice(options, system)
    case 'cold': {
      const temperature = temperatureOf('at', options.at, system)
      return temperature.ok ? ok({ ask: 'cold', temperature_c: temperature.value }) : temperature
    }
    case 'baths':
      return baths(options, system)
    case 'standing':
      return standing(readings.value, options, system)
  }
}

type Things = Extract<TemperQuestion, { ask: 'together' }>['things']

function withThings(
  { thing = [] }: TemperOptions,
  system: UnitSystem,
  make: (things: Things) => Result<TemperQuestion>,
): Result<TemperQuestion> {
  const things = all(thing.map((text) => thingOf(text, system)))
  return things.ok ? make(things.value) : things
}

function taps(options: TemperOptions, system: UnitSystem): Result<TemperQuestion> {
  const volume = volumeOf('volume', options.volume, system)
  if (!volume.ok) return volume
  const three = all((['want', 'hot', 'cold'] as const).map((flag) => temperatureOf(flag, options[flag], system)))
  if (!three.ok) return three
  const [wanted_c, hot_c, cold_c] = three.value as [never, never, never]
  return withThings(options, system, ([vessel, second]) =>
    second === undefined
      ? ok({
          ask: 'taps',
          volume_ml: volume.value,
          wanted_c,
          hot_c,
          cold_c,
          ...(vessel === undefined ? {} : { vessel }),
        })
      : failed(usage('Only one --thing is the vessel that the water is mixed in.')),
  )
}

function pour(options: TemperOptions, system: UnitSystem): Result<TemperQuestion> {
  const volume = volumeOf('volume', options.volume, system)
  if (!volume.ok) return volume
  const wanted = temperatureOf('want', options.want, system)
  if (!wanted.ok) return wanted
  return withThings(options, system, (things) =>
    ok({ ask: 'pour', volume_ml: volume.value, wanted_c: wanted.value, things }),
  )
}

function ice(options: TemperOptions, system: UnitSystem): Result<TemperQuestion> {
  const volume = volumeOf('volume', options.volume, system)
  if (!volume.ok) return volume
  const both = all([temperatureOf('from', options.from, system), temperatureOf('want', options.want, system)])
  if (!both.ok) return both
  const [from_c, wanted_c] = both.value as [never, never]
  return ok({ ask: 'ice', volume_ml: volume.value, from_c, wanted_c })
}

/** `Fix 21C`: a name and a temperature; the one called developer develops. */
function baths({ bath = [] }: TemperOptions, system: UnitSystem): Result<TemperQuestion> {
  const read = all(
    bath.map((text) => {
      const cut = text.trim().match(/^(.+?)[\s=]+(\S+)$/)
      if (!cut) return failed(usage(`“${text}” is no bath with its temperature. Write it like “Fix 21C”.`))
      const temperature = typed(readTemperature(cut[2] as string, { system }))
      const name = cut[1] as string
      return temperature.ok
        ? ok({ name, temperature_c: temperature.value, develops: /^developer\b/i.test(name), window: null })
        : temperature
    }),
  )
  return read.ok ? ok({ ask: 'baths', baths: read.value }) : read
}

function standing(text: string, options: TemperOptions, system: UnitSystem): Result<TemperQuestion> {
  const around = temperatureOf('around', options.around, system)
  if (!around.ok) return around
  const readings = readingsIn(text, system)
  if (!readings.ok) return readings
  const named = namedOf(options, system)
  if (!named.ok) return named
  const error = numbersOf(options, ['readingError'])
  if (!error.ok) return error
  return ok({
    ask: 'standing',
    around_c: around.value,
    ...named.value,
    ...(readings.value.length === 0
      ? {}
      : { readings: readings.value.map(({ at, temperature }) => ({ at_s: at, temperature_c: temperature })) }),
    ...(error.value.readingError === undefined ? {} : { reading_error_c: error.value.readingError }),
  })
}

type Standing = Extract<TemperQuestion, { ask: 'standing' }>

/** What of a standing vessel options say. */
function namedOf(options: TemperOptions, system: UnitSystem): Result<Partial<Standing>> {
  const from = options.from === undefined ? null : temperatureOf('from', options.from, system)
  if (from?.ok === false) return from
  const wanted = options.want === undefined ? null : temperatureOf('want', options.want, system)
  if (wanted?.ok === false) return wanted
  const constant = options.constant === undefined ? null : typed(readDuration(options.constant))
  if (constant?.ok === false) return constant
  const after = options.after === undefined ? null : typed(readDuration(options.after))
  if (after?.ok === false) return after
  const volume = options.material === undefined ? null : volumeOf('volume', options.volume, system)
  if (volume?.ok === false) return volume
  return ok({
    ...(from === null ? {} : { from_c: from.value }),
    ...(wanted === null ? {} : { wanted_c: wanted.value }),
    ...(constant === null ? {} : { constant_s: constant.value }),
    ...(after === null ? {} : { after_s: after.value }),
    ...(volume === null || options.material === undefined
      ? {}
      : { vessel: { volume_ml: volume.value, material: options.material, stands_in: options.in ?? 'air' } }),
  })
}
