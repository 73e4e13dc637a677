import { laterTurns, openingLength } from '../recipe/agitation.js'
import type { Bath } from '../recipe/definition.js'
import { isBath } from '../recipe/kinds.js'
import { isBefore } from '../recipe/moments.js'
import type { Job, JobPart, JobPartKind, Laid, Tank } from './definition.js'
import { pourBefore } from './lay-out.js'

/** Turns after the opening may begin this much later when hands are needed elsewhere, seconds. */
export const TURN_SLIDE = 15
/** Reading a thermometer in the tank, seconds. */
const CHECK = 5

/** Everything hands do to a tank, in order of time. A bath change is one job: drain, cap, pour, tap, opening turns. */
export function jobsOf(tank: Tank, laid: readonly Laid[]): Job[] {
  const steps = laid.filter(({ skipped }) => !skipped)
  const baths = steps.flatMap((one, i) => (isBath(one.step) ? bathJobs(steps, i) : []))
  const others = steps.flatMap((one) => (isBath(one.step) ? checksOf(tank, one) : [actJob(one)]))
  const jobs = [...baths]
  for (const other of others) jobs.push(clearOf(jobs, other))
  return jobs.sort((a, b) => a.start - b.start || a.index - b.index)
}

/** Begins where hands are free: a look or a check that falls on a turn comes right after it. */
function clearOf(jobs: readonly Job[], job: Job): Job {
  const inTheWay = jobs.filter(({ start, end }) => start < job.end && end > job.start).map(({ end }) => end)
  if (inTheWay.length === 0) return job
  const start = Math.max(...inTheWay)
  return clearOf(jobs, { ...job, start, end: start + job.end - job.start })
}

function bathJobs(steps: readonly Laid[], i: number): Job[] {
  const one = steps[i] as Laid
  const before = lastBath(steps, i)
  const joined =
    before !== null && !isBefore(before.free + (one.step as Bath).handling.cap.seconds, pourStart(one) - JOIN)
  return [change(one, before, joined), ...turnsOf(one), ...(drainsAlone(steps, i) ? [drainJob(one)] : [])]
}

/** A bath poured more than this after the tank was free is a job of its own, seconds. */
const JOIN = 1

const pourStart = (one: Laid): number => one.in - pourBefore(one.step as Bath)

/** The bath that this one directly follows; null when it is the first, or an act stands between. */
function lastBath(steps: readonly Laid[], i: number): Laid | null {
  for (let k = i - 1; k >= 0; k--) {
    const one = steps[k] as Laid
    if (isBath(one.step)) return one
    if (one.step.within === null) return null
  }
  return null
}

/** The next step outside this bath does not take the draining over. */
function drainsAlone(steps: readonly Laid[], i: number): boolean {
  const next = steps.slice(i + 1).find(({ step }) => isBath(step) || step.within === null)
  if (next === undefined || !isBath(next.step)) return true
  const free = (steps[i] as Laid).free + next.step.handling.cap.seconds
  return isBefore(free, pourStart(next) - JOIN)
}

/** Parts one after the other from `start`; those without length are left out. */
function partsFrom(start: number, lengths: readonly (readonly [JobPartKind, number])[]): JobPart[] {
  let at = start
  return lengths.flatMap(([part, length]) => {
    if (length <= 0) return []
    const made = { part, start: at, end: at + length }
    at = made.end
    return [made]
  })
}

function change(one: Laid, before: Laid | null, joined: boolean): Job {
  const bath = one.step as Bath
  const { pour, tap, cap } = bath.handling
  const tapped = tap?.seconds ?? 0
  const clockToOut = one.out - one.in
  const opening = Math.min(openingLength(one.agitation ?? bath.agitation, clockToOut), Math.max(0, clockToOut - tapped))
  const tail = [
    ['pour', pour.seconds] as const,
    ['tap', Math.min(tapped, clockToOut)] as const,
    ['turns', opening] as const,
  ]
  const parts =
    before !== null && joined
      ? partsFrom(before.out, [['drain', before.free - before.out], ['cap', cap.seconds], ...tail])
      : partsFrom(pourStart(one), tail)
  return job(one, 'change', 'change', parts, before === null ? 0 : (before.step as Bath).mayStay)
}

const drainJob = (one: Laid): Job =>
  job(one, 'drain', 'drain', partsFrom(one.out, [['drain', one.free - one.out]]), (one.step as Bath).mayStay)

function turnsOf(one: Laid): Job[] {
  const agitation = one.agitation ?? (one.step as Bath).agitation
  const tapping = (one.step as Bath).handling.tap?.seconds ?? 0
  return laterTurns(agitation, one.out - one.in, tapping).map(({ at, length }, i) => {
    const parts = partsFrom(one.in + at, [['turns', length]])
    return job(one, 'turn', `turn-${i + 1}`, parts, TURN_SLIDE)
  })
}

function checksOf(tank: Tank, one: Laid): Job[] {
  if (one.development === null) return []
  return tank.checks
    .filter((at) => !isBefore(one.out, one.in + at + CHECK))
    .map((at, i) => ({
      ...job(one, 'check', `check-${i + 1}`, [], TURN_SLIDE),
      start: one.in + at,
      end: one.in + at + CHECK,
    }))
}

const actJob = (one: Laid): Job => ({
  ...job(one, one.step.kind as Job['kind'], 'act', [], TURN_SLIDE),
  start: one.in,
  end: one.out,
})

function job(one: Laid, kind: Job['kind'], name: string, parts: readonly JobPart[], maySlide: number): Job {
  return {
    id: `${one.step.id}/${name}`,
    kind,
    index: one.index,
    start: parts[0]?.start ?? one.in,
    end: parts.at(-1)?.end ?? one.in,
    parts,
    maySlide,
  }
}
