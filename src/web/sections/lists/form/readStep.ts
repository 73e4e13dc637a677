import {
  type Celsius,
  type Reading,
  readDuration,
  readNumber,
  readTemperature,
  type Seconds,
  type UnitSystem,
} from '../../../../kernel/index.js'
import type { Act, Agitation, Bath, Step, TimeLaw, Turn } from '../../../../score/index.js'
import type { ActDraft, BathDraft, StepDraft } from './draft.js'
import { type Moment, readMoments, readTurn } from './turns.js'

const BATH_TIMES = [
  'seconds',
  'assumed',
  'least',
  'most',
  'every',
  'first',
  'from',
  'pour',
  'drain',
  'cap',
  'tap',
  'mayStay',
] as const
const ACT_TIMES = ['takes', 'within'] as const
export type TimeField = (typeof BATH_TIMES)[number] | (typeof ACT_TIMES)[number]

type Maybe<T> = Reading<T> | null

/** How the fields of a step were read; null where nothing is typed. */
export interface StepReading {
  /** Null while something that is needed cannot be read. */
  readonly step: Step | null
  readonly times: Readonly<Partial<Record<TimeField, Maybe<Seconds>>>>
  readonly low: Maybe<Celsius>
  readonly high: Maybe<Celsius>
  readonly opening: Maybe<Turn>
  readonly turn: Maybe<Turn>
  readonly moments: Maybe<readonly Moment[]>
}

const optional = <T>(text: string, read: (text: string) => Reading<T>): Maybe<T> =>
  text.trim() === '' ? null : read(text)

/** Something that is typed and cannot be read. */
class Unread extends Error {}

/** The value of a field that has to be there. */
function needed<T>(reading: Maybe<T> | undefined): T {
  if (reading?.kind !== 'read') throw new Unread()
  return reading.value
}

/** The value of a field that may be empty, but not unreadable. */
const ifAny = <T>(reading: Maybe<T> | undefined): T | null =>
  reading === null || reading === undefined ? null : needed(reading)

export const readStep = (draft: StepDraft, units: UnitSystem): StepReading =>
  draft.step === 'bath' ? readBath(draft, units) : readAct(draft)

const NOT_OF_AN_ACT = { low: null, high: null, opening: null, turn: null, moments: null } as const

function readAct(draft: ActDraft): StepReading {
  const times = { takes: optional(draft.takes, readDuration), within: optional(draft.within, readDuration) }
  const step = whole(
    (): Act => ({
      ...statedOf(draft),
      step: 'act',
      kind: draft.kind,
      length: { seconds: needed(times.takes), origin: draft.takesOrigin },
      within: ifAny(times.within),
    }),
  )
  return { ...NOT_OF_AN_ACT, times, step }
}

function readBath(draft: BathDraft, units: UnitSystem): StepReading {
  const degrees = (text: string) => optional(text, (typed) => readTemperature(typed, { system: units }))
  const fields = {
    times: Object.fromEntries(BATH_TIMES.map((field) => [field, optional(draft[field], readDuration)])) as Times,
    low: degrees(draft.low),
    high: degrees(draft.high),
    opening: optional(draft.opening, readTurn),
    turn: optional(draft.turn, readTurn),
    moments: readMoments(draft.moments),
  }
  return { ...fields, step: whole(() => bathOf(draft, fields)) }
}

type Times = Record<(typeof BATH_TIMES)[number], Maybe<Seconds>>
type BathFields = Omit<StepReading, 'step' | 'times'> & { readonly times: Times }

function whole<T>(make: () => T): T | null {
  try {
    return make()
  } catch (fault) {
    if (fault instanceof Unread) return null
    throw fault
  }
}

const statedOf = ({ id, name, reason, cautions }: StepDraft) => ({
  id,
  name: name.trim(),
  reason: reason.trim(),
  cautions,
})

function bathOf(draft: BathDraft, fields: BathFields): Bath {
  const { times, low, high } = fields
  const noWindow = low === null && high === null
  return {
    ...statedOf(draft),
    step: 'bath',
    kind: draft.kind,
    time: lawOf(draft, times),
    agitation: turningOf(draft, fields),
    window: noWindow ? null : { from: needed(low), to: needed(high), origin: draft.windowOrigin },
    convention: { starts: draft.starts, ends: draft.ends },
    handling: {
      pour: { seconds: needed(times.pour), origin: draft.pourOrigin },
      drain: { seconds: needed(times.drain), origin: draft.drainOrigin },
      cap: { seconds: needed(times.cap), origin: draft.capOrigin },
      tap: times.tap === null ? null : { seconds: needed(times.tap), origin: draft.tapOrigin },
    },
    goesTo: draft.goesTo,
    neverPartFromNext: draft.neverPart,
    mayStay: needed(times.mayStay),
  }
}

function lawOf({ law, multiple, timeOrigin: origin }: BathDraft, times: Times): TimeLaw {
  if (law === 'by-developing-time') return { law }
  if (law === 'fixed') return { law, seconds: needed(times.seconds), origin }
  const several = readNumber(multiple.trim())
  if (several === undefined) throw new Unread()
  const { assumed, least, most } = times
  return { law, multiple: several, assumed: needed(assumed), least: needed(least), most: needed(most), origin }
}

function turningOf(draft: BathDraft, fields: BathFields): Agitation {
  const from = draft.moved === 'continuous' ? null : ifAny(fields.times.from)
  const before = turningBefore(draft, fields)
  return from === null ? before : { kind: 'then-continuous', before, from }
}

function turningBefore({ moved }: BathDraft, { times, opening, turn, moments }: BathFields): Agitation {
  if (moved === 'moments') return { kind: moved, opening: ifAny(opening), moments: needed(moments) }
  if (moved !== 'turns') return { kind: moved }
  const first = ifAny(times.first)
  const every = { opening: ifAny(opening), turn: needed(turn), every: needed(times.every) }
  return { kind: moved, ...every, ...(first === null ? {} : { first }) }
}
