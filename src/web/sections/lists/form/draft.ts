import { type Celsius, toFahrenheit, type UnitSystem } from '../../../../kernel/index.js'
import type { Act, Agitation, Bath, Caution, Recipe, Step, TimeLaw } from '../../../../score/index.js'
import { writeMoments, writeTime, writeTurn } from './turns.js'

type Origin = Bath['handling']['pour']['origin']

interface StepText {
  /** Stays with the step while it is moved about; events of a run name it. */
  readonly id: string
  readonly name: string
  readonly reason: string
  readonly cautions: readonly Caution[]
}

/** A bath as it is being typed: quantities are texts. */
export interface BathDraft extends StepText {
  readonly step: 'bath'
  readonly kind: Bath['kind']
  readonly law: TimeLaw['law']
  readonly seconds: string
  readonly multiple: string
  readonly assumed: string
  readonly least: string
  readonly most: string
  readonly timeOrigin: Origin
  readonly moved: Exclude<Agitation['kind'], 'then-continuous'>
  readonly opening: string
  readonly turn: string
  readonly every: string
  readonly first: string
  readonly moments: string
  /** From when on without a stop; empty for never. */
  readonly from: string
  readonly low: string
  readonly high: string
  readonly windowOrigin: Origin
  readonly starts: Bath['convention']['starts']
  readonly ends: Bath['convention']['ends']
  readonly pour: string
  readonly drain: string
  readonly cap: string
  readonly tap: string
  readonly pourOrigin: Origin
  readonly drainOrigin: Origin
  readonly capOrigin: Origin
  readonly tapOrigin: Origin
  readonly goesTo: Bath['goesTo']
  readonly neverPart: boolean
  readonly mayStay: string
}

export interface ActDraft extends StepText {
  readonly step: 'act'
  readonly kind: Act['kind']
  readonly takes: string
  readonly takesOrigin: Origin
  /** Seconds into the bath before it; empty when it comes after that bath is out. */
  readonly within: string
}

export type StepDraft = BathDraft | ActDraft

export interface ListDraft {
  readonly name: string
  readonly process: Recipe['process']
  readonly about: string
  readonly steps: readonly StepDraft[]
}

export const draftOfList = ({ name, process, about, steps }: Omit<Recipe, 'id'>, units: UnitSystem): ListDraft => ({
  name,
  process,
  about,
  steps: steps.map((step) => draftOfStep(step, units)),
})

export const draftOfStep = (step: Step, units: UnitSystem): StepDraft =>
  step.step === 'bath' ? bathDraft(step, units) : actDraft(step)

const textsOf = ({ id, name, reason, cautions }: Step): StepText => ({ id, name, reason, cautions })

const actDraft = (act: Act): ActDraft => ({
  ...textsOf(act),
  step: 'act',
  kind: act.kind,
  takes: writeTime(act.length.seconds),
  takesOrigin: act.length.origin,
  within: act.within === null ? '' : writeTime(act.within),
})

function bathDraft(bath: Bath, units: UnitSystem): BathDraft {
  const { kind, window, convention, handling, goesTo, neverPartFromNext, mayStay } = bath
  const { pour, drain, cap, tap } = handling
  return {
    ...textsOf(bath),
    step: 'bath',
    kind,
    ...timeTexts(bath.time),
    ...turningTexts(bath.agitation),
    low: window === null ? '' : writeDegree(window.from, units),
    high: window === null ? '' : writeDegree(window.to, units),
    windowOrigin: window?.origin ?? 'sheet',
    ...convention,
    pour: writeTime(pour.seconds),
    drain: writeTime(drain.seconds),
    cap: writeTime(cap.seconds),
    tap: tap === null ? '' : writeTime(tap.seconds),
    pourOrigin: pour.origin,
    drainOrigin: drain.origin,
    capOrigin: cap.origin,
    tapOrigin: tap?.origin ?? 'assumption',
    goesTo,
    neverPart: neverPartFromNext,
    mayStay: writeTime(mayStay),
  }
}

/** Windows of colour developers are narrower than the tenth of a degree that readings are written to. */
const writeDegree = (value: Celsius, units: UnitSystem): string =>
  `${Number((units === 'us' ? toFahrenheit(value) : value).toFixed(3))} °${units === 'us' ? 'F' : 'C'}`

const NO_TIME = { seconds: '', multiple: '2', assumed: '', least: '', most: '' } as const

function timeTexts(time: TimeLaw) {
  const { law } = time
  if (time.law === 'by-developing-time') return { ...NO_TIME, law, timeOrigin: 'sheet' as const }
  if (time.law === 'fixed') return { ...NO_TIME, law, timeOrigin: time.origin, seconds: writeTime(time.seconds) }
  return {
    law,
    timeOrigin: time.origin,
    seconds: '',
    multiple: String(time.multiple),
    assumed: writeTime(time.assumed),
    least: writeTime(time.least),
    most: writeTime(time.most),
  }
}

const NO_TURNS = { opening: '', turn: '', every: '', first: '', moments: '', from: '' } as const

type TurningTexts = Pick<BathDraft, 'moved' | keyof typeof NO_TURNS>

function turningTexts(agitation: Agitation): TurningTexts {
  if (agitation.kind === 'then-continuous')
    return { ...turningTexts(agitation.before), from: writeTime(agitation.from) }
  if (agitation.kind !== 'turns' && agitation.kind !== 'moments') return { ...NO_TURNS, moved: agitation.kind }
  const opening = agitation.opening === null ? '' : writeTurn(agitation.opening)
  if (agitation.kind === 'moments')
    return { ...NO_TURNS, moved: 'moments', opening, moments: writeMoments(agitation.moments) }
  return {
    ...NO_TURNS,
    moved: 'turns',
    opening,
    turn: writeTurn(agitation.turn),
    every: writeTime(agitation.every),
    first: agitation.first === undefined ? '' : writeTime(agitation.first),
  }
}
