import {
  type Celsius,
  type Grams,
  type Millilitres,
  type Reading,
  type Result,
  readDuration,
  readMass,
  readTemperature,
  readVolume,
  type Seconds,
  type UnitSystem,
} from '../../../../kernel/index.js'
import { type DevelopmentWish, plan, type Recipe, type Score } from '../../../../score/index.js'
import { say } from '../../../../words/index.js'
import type { FilmRecord, PlanRunInput, ThermometerRecord, TimeRecord } from '../../../shared/api/index.js'
import { basisOf, correctionFor } from '../../../shared/figures/index.js'
import { measuredBaths } from '../names.js'
import { type Around, aroundOf } from './around.js'
import type { PlanDraft } from './draft.js'
import { askedLoad, askedReels, stopsOf } from './rolls/load.js'
import { type Mixed, mixedOf } from './rolls/mixed.js'

/** How the whole plan was read, and what becomes of it. */
export interface PlanReading {
  readonly time: Reading<Seconds> | null
  readonly temperature: Reading<Celsius> | null
  readonly volume: Reading<Millilitres> | null
  readonly temperatures: Readonly<Record<string, Reading<Celsius> | null>>
  readonly room: Reading<Celsius> | null
  readonly weight: Reading<Grams> | null
  /** What the room and the tank itself do to the developer. */
  readonly around: Around
  /** How rolls that want different times come together; null where they are developed alike. */
  readonly mixed: Mixed | null
  /** Sentences by field. */
  readonly troubles: Readonly<Record<string, string>>
  /** Null while a developing time is still missing. */
  readonly score: Result<Score> | null
  /** What to ask the bench for, once nothing is wrong. */
  readonly asked: PlanRunInput | null
}

interface Given {
  readonly draft: PlanDraft
  readonly recipe: Recipe
  readonly time: TimeRecord | null
  /** With which every temperature was read. */
  readonly thermometer: ThermometerRecord | null
  /** What is kept of the films, for what each of them bears. */
  readonly films: readonly FilmRecord[]
  readonly times: readonly TimeRecord[]
  readonly units: UnitSystem
}

const optional = <T>(text: string, read: (text: string) => Reading<T>) => (text.trim() === '' ? null : read(text))
const readValue = <T>(reading: Reading<T> | null | undefined): T | null =>
  reading?.kind === 'read' ? reading.value : null

/** Whether the developers of a list take a developing time. */
export const takesTime = ({ steps }: Recipe): boolean =>
  steps.some((step) => step.step === 'bath' && step.time.law === 'by-developing-time')

/** What is on the reels: as typed, else as the kept time has it. */
export const onReels = ({ film, index }: PlanDraft, time: TimeRecord | null) => ({
  film: film ?? time?.film ?? '',
  index: index ?? (time?.exposure_index ?? '').toString(),
})

export function readPlan({ draft, recipe, time, thermometer, films, times, units }: Given): PlanReading {
  const reels = onReels(draft, time)
  const degrees = (text: string) => optional(text, (typed) => readTemperature(typed, { system: units }))
  const fields = {
    time: optional(draft.time, (typed) => readDuration(typed)),
    temperature: degrees(draft.temperature),
    volume: optional(draft.volume, (typed) => readVolume(typed, { system: units })),
    room: degrees(draft.room),
    weight: optional(draft.weight, (typed) => readMass(typed, { system: units })),
    temperatures: Object.fromEntries(
      measuredBaths(recipe).map(({ id }) => [id, degrees(draft.temperatures[id] ?? '')] as const),
    ),
  }
  const unread = [
    fields.time,
    fields.temperature,
    fields.volume,
    fields.room,
    fields.weight,
    ...Object.values(fields.temperatures),
  ].some((reading) => reading !== null && reading.kind !== 'read')
  const right = putRight(thermometer)
  const measured = readValue(fields.temperature)
  const temperature = measured === null ? null : right(measured)
  const mixed = mixedOf({ load: draft.load, times, films, time, temperature })
  const troubles = {
    ...(mixed?.shared === null ? { rolls: say('plan.mixed.missing', {}, units) } : {}),
    ...troublesOf({ ...draft, ...reels }, recipe, units),
  }
  const alone = wishOf(recipe, time, readValue(fields.time), temperature)
  const wish = draft.load.shared && mixed !== null ? sharedWish(mixed, alone) : alone
  const around = aroundOf(fields, draft.material, developerOf(wish))
  if (wish === 'missing') return { ...fields, around, mixed, troubles, score: null, asked: null }
  const conditions = {
    tank: draft.tank.trim() || 'A',
    volume: readValue(fields.volume),
    temperatures: known(fields.temperatures, right),
    room: around.room,
    overridesSpread: draft.override,
  }
  const score = plan([{ recipe, conditions: { ...conditions, development: wish } }])
  const ready = score.ok && !unread && Object.keys(troubles).length === 0
  const development = wish === alone ? askedOf(wish, time) : sharedOf(wish)
  const asked = ready ? askedFor({ ...draft, ...reels }, recipe, { ...conditions, development }, time) : null
  return { ...fields, around, mixed, troubles, score, asked }
}

/** One time for a mixed tank, at the temperature that the plan has without it; missing until every time is known. */
function sharedWish({ shared }: Mixed, alone: DevelopmentWish | null | 'missing'): DevelopmentWish | 'missing' {
  const temperature = developerOf(alone)
  if (!shared?.ok || temperature === null) return 'missing'
  return { from: 'own', time: shared.value.time, temperature }
}

const sharedOf = (wish: DevelopmentWish | null): AskedConditions['development'] =>
  wish?.temperature == null ? null : { from: 'shared', temperature: wish.temperature }

type PutRight = (read: Celsius) => Celsius

/** What a reading of this thermometer means; without one, or without a check, it is taken at its word. */
function putRight(thermometer: ThermometerRecord | null): PutRight {
  const correction = thermometer === null ? null : correctionFor(thermometer)
  return (read) => (correction?.ok ? correction.value.at(read).true : read)
}

const developerOf = (wish: DevelopmentWish | null | 'missing'): Celsius | null =>
  wish === null || wish === 'missing' ? null : wish.temperature

function known(readings: PlanReading['temperatures'], right: PutRight): Record<string, Celsius> {
  return Object.fromEntries(
    Object.entries(readings).flatMap(([id, reading]) => {
      const value = readValue(reading)
      return value === null ? [] : [[id, right(value)] as const]
    }),
  )
}

/** How long to develop; null for lists whose developers have fixed times. */
function wishOf(
  recipe: Recipe,
  time: TimeRecord | null,
  typed: Seconds | null,
  temperature: Celsius | null,
): DevelopmentWish | null | 'missing' {
  if (!takesTime(recipe)) return null
  if (time === null) return typed === null ? 'missing' : { from: 'own', time: typed, temperature }
  const basis = basisOf(time)
  if (!basis.ok) return 'missing'
  return { from: 'basis', basis: basis.value, temperature: temperature ?? basis.value.reference.temperature }
}

type AskedConditions = PlanRunInput['tanks'][number]['conditions']

const askedOf = (wish: DevelopmentWish | null, time: TimeRecord | null): AskedConditions['development'] =>
  wish?.from === 'basis' && time !== null
    ? { from: 'kept', time_id: time.id, temperature: wish.temperature }
    : (wish as AskedConditions['development'])

/** A draft whose reels are filled in. */
type Filled = PlanDraft & ReturnType<typeof onReels>

function askedFor(draft: Filled, recipe: Recipe, conditions: AskedConditions, time: TimeRecord | null): PlanRunInput {
  return {
    practice: draft.practice === 'no' ? null : (Number(draft.practice) as 1 | 5 | 20),
    note: draft.note.trim(),
    thermometer_id: draft.thermometer === '' ? null : draft.thermometer,
    tanks: [
      {
        reels: Math.max(Number(draft.reels), ...draft.load.rolls.map(({ reel }) => reel)),
        on_reels: draft.load.rolls.length > 0 ? askedReels(draft.load) : [typedReel(draft)],
        ...(time === null ? {} : { developer: time.developer, dilution_parts: time.dilution_parts }),
        ...askedLoad(draft.load),
        // A list as it is shown is a list as it is asked for; only the score's are readonly.
        recipe: recipe as unknown as PlanRunInput['tanks'][number]['recipe'],
        conditions,
      },
    ],
  }
}

const typedReel = ({ film, index, label }: Filled): PlanRunInput['tanks'][number]['on_reels'][number] => ({
  film: film.trim(),
  exposure_index: index.trim() === '' ? null : Number(index),
  label: label.trim(),
})

const whole = (text: string, least: number, most: number): boolean =>
  /^\d{1,6}$/.test(text.trim()) && Number(text) >= least && Number(text) <= most

function troublesOf(draft: Filled, recipe: Recipe, units: UnitSystem): Record<string, string> {
  const troubles: Record<string, string> = {}
  const needed = (what: string, example: string) => say('times.form.needed', { what, example }, units)
  const [stopped] = stopsOf(draft.load, recipe.process)
  if (stopped !== undefined) troubles['rolls'] = stopped
  if (draft.load.rolls.length === 0 && draft.film.trim() === '')
    troubles['film'] = needed('What is on the reels', 'a film, or “spare roll”')
  if (draft.tank.trim() === '') troubles['tank'] = needed('The name of the tank', 'A')
  if (!whole(draft.reels, 1, 40)) troubles['reels'] = needed('The number of reels', '2, at most 40')
  if (draft.index.trim() !== '' && !whole(draft.index, 1, 25_600))
    troubles['index'] = needed('The exposure index', '400, at most 25600')
  return troubles
}
