import { type Instant, problem, type TimeOfDay, wallClocks } from '../../kernel/index.js'
import type { RunEvent } from '../events/definition.js'
import { fold } from '../events/fold.js'
import type { Score, TankPlan } from '../plan/definition.js'
import { pourBefore } from '../plan/lay-out.js'
import { isBath } from '../recipe/kinds.js'
import type { Finding, FromPaper, SheetRead, WrittenSheet, WrittenTank } from './definition.js'
import { event, type SheetTank } from './events-of.js'
import { type Anchor, aheadOf, instantOf, type Place } from './place.js'
import { placeRest } from './rest.js'
import { type Dated, type DatedTank, dateTank, misplaced } from './tank.js'

/** When, where and after what a sheet is read. */
export interface ReadAt {
  readonly zone: string
  readonly now: Instant
  /** What screens wrote down of the run before it went on by paper; none for most. */
  readonly known: readonly RunEvent[]
}

/**
 * What a bench sheet says: each time with its instant, what happened as the same events that a screen would have
 * written, and what is to be said of its fields. Pure: the page echoes with it and the bench keeps by it.
 *
 * An empty box gives no event. Where some step is left without a moment the tank is said to be finished, which makes
 * `follow` take the plan's moment for it and say so. Cost: linear in boxes, but for the dose of the developing bath.
 */
export function readSheet(score: Score, sheet: WrittenSheet, { zone, now, known }: ReadAt): SheetRead {
  const place: Place = { day: sheet.day, clocks: wallClocks(zone), now }
  const state = fold(score, known)
  if (state.doubts.length > 0)
    return refused({ field: 'zero', problem: problem('run.clock-in-doubt'), stands: 'never' })
  const zero = zeroOf(sheet.zero, place)
  const tanks = tanksOf(score, sheet)
  const dated: DatedTank[] = []
  let start = zero.anchor
  for (const { plan, written, field } of tanks) {
    const one = dateTank(
      plan,
      written,
      field,
      start,
      { ...place, zero: zero.anchor },
      state.tanks.find(({ tank }) => tank === written.tank),
    )
    dated.push(one)
    start ??= anchorOf(one.dated[0])
  }
  const findings = [
    ...zero.findings,
    ...tanks.flatMap(({ plan, written, field }) => misplaced(plan, written, field)),
    ...dated.flatMap((one) => one.findings),
  ]
  const moments = new Map([...zero.moments, ...dated.flatMap((one) => one.moments)])
  if (start === null) {
    const nothing: Finding = { field: 'zero', problem: problem('paper.nothing'), stands: 'never' }
    return { happened: [], moments, findings: findings.length > 0 ? findings : [nothing] }
  }
  const happened = tanks.flatMap(({ plan, written }, i) => [
    ...fromZero(plan, written, zero.time, zero.anchor, dated[i]?.dated ?? []),
    ...(dated[i]?.dated ?? []).flatMap((one) => fromBox(plan, written, one)),
  ])
  const rest = placeRest(score, tanks, { happened, known, place })
  return {
    happened: rest.happened,
    moments: new Map([...moments, ...rest.moments]),
    findings: [...findings, ...rest.findings],
  }
}

const refused = (finding: Finding): SheetRead => ({ happened: [], moments: new Map(), findings: [finding] })

const tanksOf = (score: Score, sheet: WrittenSheet): SheetTank[] =>
  sheet.tanks.flatMap((written, i) => {
    const plan = score.tanks.find(({ tank }) => tank.tank === written.tank)
    return plan === undefined ? [] : [{ plan, written, field: `tanks[${i}]` }]
  })

const anchorOf = (dated: Dated | undefined): Anchor | null =>
  dated === undefined ? null : { at: dated.at, planned: dated.moment.planned, time: dated.time }

function zeroOf(time: TimeOfDay | null, place: Place) {
  if (time === null) return { time, anchor: null, moments: [], findings: [] }
  const at = instantOf(time, null, place)
  const ahead = aheadOf(place.now, at, time, place)
  return {
    time,
    anchor: { at, planned: 0, time } satisfies Anchor,
    moments: [['zero', at] as const],
    findings: ahead === null ? [] : [{ field: 'zero', problem: ahead, stands: 'never' } satisfies Finding],
  }
}

/** Zero by the clock is the first drop: the first pour too, where that has no time of its own. */
function fromZero(
  { tank, laid }: TankPlan,
  written: WrittenTank,
  time: TimeOfDay | null,
  zero: Anchor | null,
  dated: readonly Dated[],
): FromPaper[] {
  if (time === null || zero === null || tank.offset > 0) return []
  const first = laid.find(({ step }) => isBath(step))
  const started: FromPaper = event(tank.tank, null, zero.at, time.to, { kind: 'started' })
  const known =
    first === undefined ||
    dated.some(({ moment }) => moment.index === first.index && moment.side === 'in') ||
    written.steps.some(({ step, leftOut }) => step === first.index && leftOut !== null)
  if (known || !isBath(first.step)) return [started]
  const clock = zero.at + pourBefore(first.step) * 1000
  return [started, event(tank.tank, first.index, clock, time.to, { kind: 'poured-in' })]
}

function fromBox({ tank, laid }: TankPlan, written: WrittenTank, { moment, at, time, byScreen }: Dated): FromPaper[] {
  if (byScreen) return []
  const { index, side } = moment
  const step = laid[index]?.step
  if (step === undefined) return []
  if (side === 'out') return [event(tank.tank, index, at, time.to, { kind: 'poured-out' })]
  if (side === 'in') {
    const clock = at + (isBath(step) ? pourBefore(step) * 1000 : 0)
    return [event(tank.tank, index, clock, time.to, { kind: 'poured-in' })]
  }
  const clearing = written.steps.find((one) => one.step === index)?.clearing ?? null
  const seen = clearing === null ? {} : { clearing }
  return [event(tank.tank, index, at, time.to, { kind: 'step-done', ...seen })]
}
