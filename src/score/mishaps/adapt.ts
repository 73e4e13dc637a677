import type { EventOf, MishapKind } from '../events/definition.js'
import type { Placed, StepState, TankState } from '../events/fold.js'
import type { Development, StepFacts, Tank } from '../plan/definition.js'
import { develops, isBath } from '../recipe/kinds.js'

type Mishap = Placed<EventOf<'mishap'>>
/** Facts by place in the list, still open to change. */
export type OpenFacts = Map<number, StepFacts>

interface Happened {
  readonly tank: Tank
  readonly state: TankState
  /** Instants to seconds from the tank's zero. */
  readonly secondsOf: (at: number) => number
}

/** A film that went into the fixer straight from the developer stays in so much longer. Ours. */
const STOPPING_IN_FIXER = 30

/**
 * What went wrong turned into what the rest of the run becomes. Where nothing can be made better by moving a
 * time, nothing is moved, and the card alone says what to do.
 */
export function adaptFacts(facts: OpenFacts, happened: Happened): OpenFacts {
  return happened.state.mishaps.reduce(
    (known, mishap) => ADAPTATIONS[mishap.event.mishap](known, mishap, happened),
    new Map(facts),
  )
}

type Adaptation = (facts: OpenFacts, mishap: Mishap, happened: Happened) => OpenFacts

const ADAPTATIONS: Readonly<Record<MishapKind, Adaptation>> = {
  'fixer-first': restartDeveloper,
  'developer-short': turnWithoutStop,
  'wrong-dilution': otherReferenceTime,
  'lid-came-off': (facts) => facts,
  'tank-leaks': (facts) => facts,
  'stop-skipped': withoutStop,
  'power-or-phone-dead': (facts) => facts,
}

const changed = (facts: OpenFacts, index: number, more: StepFacts): OpenFacts =>
  facts.set(index, { ...facts.get(index), ...more })

const developerOf = ({ tank }: Happened): number =>
  tank.recipe.steps.findIndex((step) => isBath(step) && develops(step))

/** What was poured as developer was fixer: the developer's clock starts with the pour after the mishap. */
function restartDeveloper(facts: OpenFacts, mishap: Mishap, happened: Happened): OpenFacts {
  const index = developerOf(happened)
  const known = facts.get(index)
  if (index === -1 || known === undefined) return facts
  const { pouredIn, pouredOut, ...rest } = known
  const step = happened.state.steps.get(index)
  const again = (kind: 'poured-in' | 'poured-out') => firstAfter(step, kind, mishap.at, happened)
  const [inAgain, outAgain] = [again('poured-in'), again('poured-out')]
  return facts.set(index, {
    ...rest,
    ...(inAgain === null ? {} : { pouredIn: inAgain }),
    ...(outAgain === null ? {} : { pouredOut: outAgain }),
  })
}

/** Readings before this were of a bath that was no developer. */
export function readingsSince({ mishaps }: TankState): number {
  const last = mishaps.findLast(({ event }) => event.mishap === 'fixer-first')
  return last?.at ?? Number.NEGATIVE_INFINITY
}

function firstAfter(
  step: StepState | undefined,
  kind: 'poured-in' | 'poured-out',
  at: number,
  { secondsOf }: Happened,
): number | null {
  const all = [step?.pouredIn, step?.pouredOut, ...(step?.more ?? [])]
  const found = all.find((placed) => placed != null && placed.event.kind === kind && placed.at > at)
  return found == null ? null : secondsOf(found.at)
}

/** Part of the film stands out of the developer: the tank is turned from now on without a stop. */
function turnWithoutStop(facts: OpenFacts, mishap: Mishap, happened: Happened): OpenFacts {
  const index = developerOf(happened)
  const step = happened.tank.recipe.steps[index]
  const started = facts.get(index)?.pouredIn
  if (step === undefined || !isBath(step) || started === undefined) return facts
  const from = Math.max(0, happened.secondsOf(mishap.at) - started)
  return changed(facts, index, { agitation: { kind: 'then-continuous', before: step.agitation, from: from as never } })
}

/** The sheet's time for the dilution that is really in the tank; without one the time stays. */
function otherReferenceTime(facts: OpenFacts, { event }: Mishap, happened: Happened): OpenFacts {
  const { tank } = happened
  const time = event.referenceTime ?? null
  const index = tank.recipe.steps.findIndex((step) => isBath(step) && step.time.law === 'by-developing-time')
  if (time === null || index === -1 || tank.development === null) return facts
  return changed(facts, index, { development: withTime(tank.development, time) })
}

function withTime(development: Development, time: number): Development {
  if (development.from === 'own') return { ...development, time: time as never }
  const target = (development.target * time) / development.basis.reference.time
  return { ...development, target: target as never }
}

function withoutStop(facts: OpenFacts, _: Mishap, { tank }: Happened): OpenFacts {
  const { steps } = tank.recipe
  const stop = steps.findIndex((step) => isBath(step) && step.kind === 'stop')
  const fix = steps.findIndex((step, i) => i > stop && isBath(step) && step.kind === 'fix')
  if (stop === -1) return facts
  const skipped = changed(facts, stop, { skipped: true })
  return fix === -1 ? skipped : changed(skipped, fix, { longer: STOPPING_IN_FIXER })
}
