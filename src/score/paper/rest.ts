import { type Instant, problem, type TimeOfDay, writeTimeOnClock } from '../../kernel/index.js'
import type { RunEvent } from '../events/definition.js'
import { fold } from '../events/fold.js'
import type { Following, ReadingTold, TankFollowing } from '../follow/definition.js'
import { follow } from '../follow/follow.js'
import type { Score } from '../plan/definition.js'
import type { Finding, FromPaper, WrittenTank } from './definition.js'
import { event, paperEvents, type SheetTank } from './events-of.js'
import { aheadOf, instantOf, type Place } from './place.js'

/** What the times of a sheet say, before what stands without a time finds its place. */
export interface Timed {
  readonly happened: readonly FromPaper[]
  readonly known: readonly RunEvent[]
  readonly place: Place
}

interface Rest {
  readonly happened: readonly FromPaper[]
  readonly moments: readonly (readonly [field: string, at: Instant])[]
  readonly findings: readonly Finding[]
}

/** Readings, remarks, what was left out and what went wrong: each at its time, or at the step that it belongs to. */
export function placeRest(score: Score, tanks: readonly SheetTank[], timed: Timed): Rest {
  const followed = followPaper(score, timed.happened, timed, true)
  const placed = tanks.map((tank) => restOf(tank, followed, timed))
  const all = [...timed.happened, ...placed.flatMap(({ happened }) => happened)]
  const after = followPaper(score, all, timed, false)
  const ended = tanks.flatMap(({ written }) => finished(written, after, all))
  const told = followPaper(score, [...all, ...ended], timed, false)
  return {
    happened: [...all, ...ended],
    moments: placed.flatMap(({ moments }) => moments),
    findings: [
      ...placed.flatMap(({ findings }) => findings),
      ...tanks.flatMap((tank, i) => readingFindings(tank, placed[i]?.readings ?? [], told)),
    ],
  }
}

/** The run by what is known so far; `over` lays out what is missing as the plan has it. */
function followPaper(score: Score, happened: readonly FromPaper[], { known, place }: Timed, over: boolean): Following {
  const names = score.tanks.map(({ tank }) => tank.tank)
  const last = Math.max(...happened.map(({ at }) => at), ...known.map(({ wallMs }) => wallMs))
  const ends = over ? names.map((tank) => event(tank, null, last, 'placed', { kind: 'finished' })) : []
  let number = 0
  const nextId = () => `paper-${String(number++).padStart(4, '0')}`
  const typed = paperEvents([...happened, ...ends], { entry: 'read', now: place.now, actor: '', nextId })
  return follow(score, fold(score, [...known, ...typed]), last)
}

const tankIn = ({ tanks }: Following, name: string): TankFollowing | undefined =>
  tanks.find(({ tank }) => tank === name)

interface RestOfTank extends Rest {
  /** Instants of the readings, in the order of the sheet. */
  readonly readings: readonly Instant[]
}

function restOf({ written, field }: SheetTank, followed: Following, { happened, place }: Timed): RestOfTank {
  const tank = tankIn(followed, written.tank)
  const began = tank?.zero ?? place.now
  const last = Math.max(began, ...happened.filter((one) => one.tank === written.tank).map(({ at }) => at))
  const moments: [string, Instant][] = []
  const findings: Finding[] = []
  /** At its time, near `about`; without a time there. */
  const put = (at: TimeOfDay | null, about: Instant, where: string) => {
    if (at === null) return { at: about, statedTo: 'placed' } as const
    const instant = instantOf(at, about, place)
    moments.push([`${field}.${where}`, instant])
    const ahead = aheadOf(place.now, instant, at, place)
    if (ahead !== null) findings.push({ field: `${field}.${where}`, problem: ahead, stands: 'never' })
    return { at: instant, statedTo: at.to }
  }
  const own = { tank: written.tank }
  const stepAt = (step: number) => began + Math.round((tank?.plan.laid[step]?.in ?? 0) * 1000)
  const readings = written.readings.map(({ step, at, temperature, sure }, i): FromPaper => {
    const happening = { kind: 'reading', temperature, confirmed: sure } as const
    return { ...own, bath: step, ...put(at, stepAt(step), `readings[${i}].at`), happening }
  })
  const rest = [
    ...readings,
    ...withoutTime(written, stepAt),
    ...written.mishaps.map(({ at, mishap, referenceTime }, i): FromPaper => {
      const happening = { kind: 'mishap', mishap, ...(referenceTime === null ? {} : { referenceTime }) } as const
      return { ...own, bath: null, ...put(at, began, `mishaps[${i}].at`), happening }
    }),
    ...written.remarks.map(({ at, text }, i): FromPaper => {
      const about = at === null ? last : began
      return { ...own, bath: null, ...put(at, about, `remarks[${i}].at`), happening: { kind: 'noted', text } }
    }),
    ...givenUp(written, (at) => put(at, at === null ? last : began, 'given_up.at')),
  ]
  return { happened: rest, moments, findings, readings: readings.map(({ at }) => at) }
}

function givenUp(
  { tank, givenUp: up }: WrittenTank,
  put: (at: TimeOfDay | null) => Pick<FromPaper, 'at' | 'statedTo'>,
): FromPaper[] {
  if (up === null) return []
  return [{ tank, bath: null, ...put(up.at), happening: { kind: 'abandoned', reason: up.reason } }]
}

/** What was left out, and a clearing time that was written without the time of its look. */
const withoutTime = ({ tank, steps }: WrittenTank, stepAt: (step: number) => Instant): FromPaper[] =>
  steps.flatMap(({ step, leftOut, clearing, doneAt }): FromPaper[] => {
    if (leftOut !== null) return [event(tank, step, stepAt(step), 'placed', { kind: 'skipped', reason: leftOut })]
    if (clearing === null || doneAt !== null) return []
    return [event(tank, step, stepAt(step), 'placed', { kind: 'step-done', clearing })]
  })

/** Where the sheet leaves a step open nobody will fill it in any more: the tank is over. */
function finished({ tank, givenUp: up }: WrittenTank, followed: Following, all: readonly FromPaper[]): FromPaper[] {
  if (up !== null || tankIn(followed, tank)?.phase === 'done') return []
  const last = Math.max(...all.map(({ at }) => at))
  return [event(tank, null, last, 'placed', { kind: 'finished' })]
}

/** What becomes of each reading, told beside its field. */
function readingFindings({ written, field }: SheetTank, instants: readonly Instant[], told: Following): Finding[] {
  const tank = tankIn(told, written.tank)
  return written.readings.flatMap(({ step, temperature, at }, i): Finding[] => {
    const found = tank?.readings.find((one) => one.at === instants[i] && one.temperature === temperature)
    const developing = tank?.plan.laid[step]?.development?.from === 'basis'
    const said = found === undefined || !developing ? null : problemOf(found, at)
    return said === null ? [] : [{ field: `${field}.readings[${i}]`, problem: said, stands: 'told' }]
  })
}

function problemOf({ verdict, temperature, expected }: ReadingTold, at: TimeOfDay | null) {
  const details = { temperature: { celsius: temperature }, expected: { celsius: Number(expected.toFixed(1)) } }
  if (verdict === 'outside') return problem('paper.reading-outside', details)
  if (verdict === 'after-pour-out')
    return problem('paper.reading-late', { at: at === null ? '(no time)' : writeTimeOnClock(at) })
  return verdict === 'fine' ? null : problem('paper.reading-far', details)
}
