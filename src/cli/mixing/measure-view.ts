import { ok, type Result } from '../../kernel/index.js'
import {
  COMMON_MEASURES,
  DROPS_A_MILLILITRE,
  dropsFor,
  type FloorAnswer,
  floorFor,
  type Graduate,
  measuresFor,
  type WaysOut,
  waysOut,
} from '../../science/index.js'
import type { DiluteAnswer, DiluteQuestion } from '../../wire/index.js'
import { say, type Writer } from '../../words/index.js'

type Asked<Ask extends DiluteQuestion['ask']> = Extract<DiluteQuestion, { ask: Ask }>

/** Whether a tank's volume carries its rolls, and the ways out. */
export function floorView(question: Asked<'floor'>, w: Writer): Result<DiluteAnswer> {
  const { ratio, volume_ml, floor_ml, rolls, tanks, others } = question
  const asked = { parts: ratio, volume: volume_ml, floor: floor_ml, rolls }
  const found = floorFor(asked)
  if (!found.ok) return found
  const out = waysOut(
    asked,
    tanks.map(({ name, holds_ml, rolls: takes }) => ({ name, holds: holds_ml, rolls: takes })),
    others,
  )
  if (!out.ok) return out
  const { enough, held, needed, volumeNeeded, dilutionNeeded } = found.value
  const { tank, dilution, fills } = out.value
  return ok({
    ask: 'floor',
    enough,
    held_ml: held,
    needed_ml: needed,
    rolls: found.value.rolls,
    volume_needed_ml: volumeNeeded,
    dilution_needed: dilutionNeeded === null ? null : [...dilutionNeeded],
    tank: tank?.name ?? null,
    other: dilution === null ? null : [...dilution],
    fills,
    sentences: enough ? [say('dilute.floor-enough', { held, needed }, w)] : shortSays(found.value, out.value, w),
    working: [
      {
        line: say('dilute.work.floor', { floor: floor_ml, rolls, needed }, w),
        source: say('dilute.source.stated', {}, w),
      },
    ],
  })
}

function shortSays(short: FloorAnswer, { tank, dilution, fills }: WaysOut, w: Writer): string[] {
  const { held, needed, rolls, volumeNeeded, dilutionNeeded } = short
  return [
    say('dilute.floor-short', { held, needed, rolls }, w),
    say('dilute.floor-volume', { volume: volumeNeeded }, w),
    ...(dilutionNeeded === null ? [] : [say('dilute.floor-dilution', { parts: dilutionNeeded }, w)]),
    ...(tank === null ? [] : [say('dilute.floor-tank', { tank: tank.name }, w)]),
    ...(dilution === null ? [] : [say('dilute.floor-other', { parts: dilution }, w)]),
    ...(fills === null ? [] : [say('dilute.floor-fills', { fills }, w)]),
  ]
}

/** What to measure a volume with. */
export function measureView({ volume_ml, graduates }: Asked<'measure'>, w: Writer): Result<DiluteAnswer> {
  const own = graduates?.map(({ kind, holds_ml, marks_ml }) => ({ kind, holds: holds_ml, marks: marks_ml, name: '' }))
  const measures = (own ?? COMMON_MEASURES).map(
    (one): Graduate => ({ ...one, name: say('dilute.measure-name', one, w) }),
  )
  const found = measuresFor(volume_ml, measures)
  if (!found.ok) return found
  const [best] = found.value
  const coarse = found.value.filter(({ tooCoarse }) => tooCoarse)
  const names = coarse.map(({ measure }) => measure.name)
  const source = say(own === undefined ? 'dilute.source.assumed-graduates' : 'dilute.source.practice', {}, w)
  return ok({
    ask: 'measure',
    by: found.value.map(({ measure, fills, error, tooCoarse }) => ({
      name: measure.name,
      kind: measure.kind,
      fills,
      error,
      too_coarse: tooCoarse,
    })),
    sentences:
      best === undefined || best.tooCoarse
        ? [say('dilute.measure-none', {}, w)]
        : [
            say('dilute.measure-best', { ...best, name: best.measure.name }, w),
            ...(names.length === 0 ? [] : [say('dilute.measure-coarse', { names }, w)]),
          ],
    working: found.value.map(({ measure, fills, error }) => ({
      line: say('dilute.work.half-mark', { name: measure.name, marks: measure.marks, fills, error }, w),
      source,
    })),
  })
}

/** A small volume in drops. */
export function dropsView({ volume_ml, drops_each }: Asked<'drops'>, w: Writer): Result<DiluteAnswer> {
  const found = dropsFor(volume_ml, drops_each)
  if (!found.ok) return found
  const { drops, volume } = found.value
  const source = drops_each === undefined ? DROPS_A_MILLILITRE.source : say('dilute.source.stated', {}, w)
  return ok({
    ask: 'drops',
    drops,
    volume_ml: volume,
    sentences: [say('dilute.drops', { drops, volume }, w)],
    working: [{ line: say('dilute.work.drops', { each: drops_each ?? DROPS_A_MILLILITRE.value }, w), source }],
  })
}
