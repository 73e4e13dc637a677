import { all, type Celsius, grams, millilitres, ok, type Result } from '../../kernel/index.js'
import {
  blended,
  coldFixing,
  coldWashing,
  fromTheTaps,
  HEAT_OF_FUSION,
  HEAT_OF_MATERIAL,
  HEAT_OF_WATER,
  iceFor,
  judgeTemperatures,
  pourAt,
  SIMPLE_RULE,
  SPREAD,
  type Warmth,
  worthInWater,
} from '../../science/index.js'
import type { TemperAnswer, TemperQuestion } from '../../wire/index.js'
import { say, type WorkingLine, type Writer } from '../../words/index.js'
import { standingView } from './standing-view.js'

type Asked<Ask extends TemperQuestion['ask']> = Extract<TemperQuestion, { ask: Ask }>

/** The answer to a question about warm and cold, with its sentences and its working. */
export function temperView(question: TemperQuestion, w: Writer): Result<TemperAnswer> {
  switch (question.ask) {
    case 'taps':
      return taps(question, w)
    case 'together':
      return together(question, w)
    case 'pour':
      return pour(question, w)
    case 'ice':
      return ice(question, w)
    case 'standing':
      return standingView(question, w)
    case 'cold':
      return cold(question, w)
    case 'baths':
      return baths(question, w)
  }
}

type Thing = Asked<'together'>['things'][number]

/** What a thing is worth in water, and the working of that. */
function warmthOf({ mass_g, temperature_c, material }: Thing, w: Writer): Result<Warmth & { work: WorkingLine[] }> {
  if (material === undefined) return ok({ water: mass_g, temperature: temperature_c, work: [] })
  const worth = worthInWater(mass_g, material)
  if (!worth.ok) return worth
  const { value: factor, source } = HEAT_OF_MATERIAL[material]
  const line = say('temper.work.material', { mass: mass_g, material, factor, worth: worth.value }, w)
  return ok({ water: worth.value, temperature: temperature_c, work: [{ line, source }] })
}

const warmthsOf = (things: readonly Thing[], w: Writer) => all(things.map((thing) => warmthOf(thing, w)))

function taps({ volume_ml, wanted_c, hot_c, cold_c, vessel }: Asked<'taps'>, w: Writer): Result<TemperAnswer> {
  const jug = vessel === undefined ? null : warmthOf(vessel, w)
  if (jug?.ok === false) return jug
  const asked = { volume: volume_ml, wanted: wanted_c, hot: hot_c, cold: cold_c }
  const found = fromTheTaps(jug === null ? asked : { ...asked, vessel: jug.value })
  if (!found.ok) return found
  const { hot, cold, forVessel, off } = found.value
  const share = millilitres(Math.max(0, hot - forVessel))
  const vesselLine = vesselSays(forVessel, w)
  return ok({
    ask: 'taps',
    hot_ml: hot,
    cold_ml: cold,
    for_vessel_ml: forVessel,
    simple_rule_off_c: off,
    sentences: [
      say('temper.taps', { hot, cold, volume: volume_ml, wanted: wanted_c }, w),
      ...(vesselLine === null ? [] : [vesselLine]),
      ...(off > SIMPLE_RULE.error ? [say('temper.taps-off', { off }, w)] : []),
    ],
    working: [
      {
        line: say('temper.work.share', { ...asked, share }, w),
        source: say('temper.source.balance', {}, w),
      },
      ...(jug === null
        ? []
        : [
            ...jug.value.work,
            {
              line: say(
                'temper.work.vessel',
                { worth: jug.value.water, temperature: jug.value.temperature, more: forVessel },
                w,
              ),
              source: say('temper.source.balance', {}, w),
            },
          ]),
      { line: say('temper.work.off', { off }, w), source: say('temper.source.iapws', {}, w) },
    ],
  })
}

/** Less than a millilitre either way is no matter of hands. */
function vesselSays(forVessel: number, w: Writer): string | null {
  if (Math.abs(forVessel) < 1) return null
  return forVessel > 0
    ? say('temper.taps-vessel', { more: millilitres(forVessel) }, w)
    : say('temper.taps-warm-vessel', { less: millilitres(-forVessel) }, w)
}

function together({ things }: Asked<'together'>, w: Writer): Result<TemperAnswer> {
  const warmths = warmthsOf(things, w)
  if (!warmths.ok) return warmths
  const found = blended(warmths.value)
  if (!found.ok) return found
  return ok({
    ask: 'together',
    temperature_c: found.value,
    sentences: [say('temper.together', { temperature: found.value }, w)],
    working: warmths.value.flatMap(({ water, temperature, work }) => [
      ...work,
      {
        line: say('temper.work.thing', { worth: water, temperature }, w),
        source: say('temper.source.balance', {}, w),
      },
    ]),
  })
}

function pour({ volume_ml, wanted_c, things }: Asked<'pour'>, w: Writer): Result<TemperAnswer> {
  const warmths = warmthsOf(things, w)
  if (!warmths.ok) return warmths
  const solution = grams(volume_ml)
  const found = pourAt(wanted_c, solution, warmths.value)
  if (!found.ok) return found
  const { pour: at, change, taken } = found.value
  return ok({
    ask: 'pour',
    pour_c: at,
    change_c: change,
    taken_c: [...taken],
    sentences: [say('temper.pour', { pour: at, wanted: wanted_c }, w)],
    working: warmths.value.flatMap(({ water, temperature, work }, i) => [
      ...work,
      {
        line: say('temper.work.taken', { worth: water, temperature, taken: taken[i] as number, solution }, w),
        source: say('temper.source.balance', {}, w),
      },
    ]),
  })
}

function ice({ volume_ml, from_c, wanted_c }: Asked<'ice'>, w: Writer): Result<TemperAnswer> {
  const found = iceFor(grams(volume_ml), from_c, wanted_c)
  if (!found.ok) return found
  const { ice: mass, place } = found.value
  const fusion = { fusion: HEAT_OF_FUSION.value, water: HEAT_OF_WATER.value, wanted: wanted_c }
  return ok({
    ask: 'ice',
    ice_g: mass,
    place,
    sentences: [
      say('temper.ice', { ice: mass, water: volume_ml, from: from_c, wanted: wanted_c }, w),
      say('temper.ice-outside', {}, w),
    ],
    working: [{ line: say('temper.work.ice', fusion, w), source: HEAT_OF_FUSION.source }],
  })
}

function cold({ temperature_c }: Asked<'cold'>, w: Writer): Result<TemperAnswer> {
  const fixing = coldFixing(temperature_c)
  if (!fixing.ok) return fixing
  const washing = coldWashing(temperature_c)
  if (!washing.ok) return washing
  return ok({
    ask: 'cold',
    fixing: fixing.value,
    washing: washing.value,
    sentences: [
      say('temper.cold-fixing', { ...fixing.value, temperature: temperature_c }, w),
      say('temper.cold-washing', { ...washing.value, temperature: temperature_c }, w),
    ],
    working: [
      { line: say('temper.work.fixing', fixing.value, w), source: fixing.value.source },
      { line: say('temper.work.washing', washing.value, w), source: washing.value.source },
    ],
  })
}

function baths({ baths: list }: Asked<'baths'>, w: Writer): Result<TemperAnswer> {
  const { outside, pairs, chain, refused } = judgeTemperatures(
    list.map(({ temperature_c, develops, window }) => ({
      temperature: temperature_c,
      develops,
      window: window === null ? null : { from: window.from_c, to: window.to_c },
    })),
  )
  const nameOf = (place: number) => (list[place] as (typeof list)[number]).name
  const limit = SPREAD.refused
  const sentences = [
    ...outside.map((place) => outsideSays(list[place] as (typeof list)[number], w)),
    ...pairs.map(({ bath, other, by, verdict }) =>
      say(`temper.bath-${verdict}`, { name: nameOf(bath), other: nameOf(other), by, limit }, w),
    ),
    ...(chain === null
      ? []
      : [say('temper.bath-chain', { first: nameOf(chain.first), last: nameOf(chain.last), by: chain.by, limit }, w)]),
  ]
  return ok({
    ask: 'baths',
    refused,
    outside: [...outside],
    pairs: pairs.map(({ by, ...pair }) => ({ ...pair, by_c: by })),
    chain: chain === null ? null : { first: chain.first, last: chain.last, by_c: chain.by },
    sentences: sentences.length === 0 ? [say('temper.baths-fine', {}, w)] : sentences,
    working: [{ line: say('temper.work.spread', SPREAD, w), source: say('temper.source.spread', {}, w) }],
  })
}

function outsideSays({ name, temperature_c, window }: Asked<'baths'>['baths'][number], w: Writer): string {
  const { from_c, to_c } = window as { from_c: Celsius; to_c: Celsius }
  return say('temper.bath-outside', { name, temperature: temperature_c, from: from_c, to: to_c }, w)
}
