import type { Seconds } from '../../kernel/index.js'
import { rateOf } from '../../science/index.js'
import type { RunState, TankState } from '../events/fold.js'
import { isFromPaper } from '../events/paper.js'
import { bathBefore } from '../plan/change.js'
import { temperatureAt } from '../plan/course.js'
import type { Facts, Laid } from '../plan/definition.js'
import { drainInside, pourBefore } from '../plan/lay-out.js'
import { isBath } from '../recipe/kinds.js'
import type { Deviation, Phase } from './definition.js'
import type { Reckoned } from './facts.js'
import { type Slack, slacksOf } from './stated.js'

/** A press this near to its second is on time, seconds: hands are no better. */
const ON_TIME = 3

/** How a tank's run departed from its plan, in the order of the list, then what concerns the whole of it. */
export function deviationsOf(
  state: RunState,
  tank: TankState,
  { laid, readings, facts }: Reckoned,
  phase: Phase,
): Deviation[] {
  // What was typed wrongly and typed again says nothing of the run.
  const own = state.events.filter(({ event }) => event.tank === tank.tank)
  const takenBack = own.filter(({ event, stands }) => !stands && !isFromPaper(event)).length
  const slacks = slacksOf(tank, laid)
  return [
    ...laid.flatMap((one) => ofStep(tank, laid, one, slacks)),
    ...laid.flatMap((one) => fixerFinished(one, facts)),
    ...(phase === 'done' ? notWritten(laid) : []),
    ...readings
      .filter(({ counts, verdict }) => !counts && verdict !== 'after-pour-out')
      .map(({ temperature, expected }): Deviation => ({ code: 'reading-not-counted', temperature, expected })),
    ...tank.mishaps.map(({ event, at }): Deviation => ({ code: 'mishap', mishap: event.mishap, at })),
    ...(takenBack === 0 ? [] : [{ code: 'taken-back', times: takenBack } as const]),
    ...(tank.abandoned === null ? [] : [{ code: 'abandoned', reason: tank.abandoned.event.reason } as const]),
  ]
}

type Slacks = ReturnType<typeof slacksOf>
const slackOf = (slacks: Slacks, { index }: Laid) => slacks.get(index) ?? { in: 0, out: 0 }

function ofStep(tank: TankState, laid: readonly Laid[], one: Laid, slacks: Slacks): Deviation[] {
  const known = tank.steps.get(one.index)
  if (known === undefined) return []
  const { name } = one.step
  if (one.skipped) return [{ code: 'skipped', name, reason: known.skipped?.event.reason ?? '' }]
  const pours = known.more.filter(({ event }) => event.kind === 'poured-in' || event.kind === 'poured-out')
  return [
    ...pouredInLate(laid, one, slacks),
    ...pouredOut(one, slackOf(slacks, one)),
    ...(pours.length === 0 ? [] : [{ code: 'pressed-twice', name, times: pours.length } as const]),
  ]
}

function fixerFinished({ step, index }: Laid, facts: Facts): Deviation[] {
  const clearing = facts.get(index)?.clearing
  if (clearing === undefined || !isBath(step) || step.time.law !== 'by-clearing') return []
  const needed = step.time.multiple * clearing
  if (needed <= step.time.most) return []
  return [{ code: 'fixer-finished', name: step.name, needed: needed as Seconds, most: step.time.most }]
}

/** Steps between baths and baths that neither hand nor pencil gave a moment, and a developing bath that lacks one. */
function notWritten(laid: readonly Laid[]): Deviation[] {
  const unknown = (by: Laid['inBy']) => by !== 'pressed'
  const asked = laid.filter(({ step, skipped }) => !skipped && (isBath(step) || step.within === null))
  const names = asked.filter(({ inBy, outBy }) => unknown(inBy) && unknown(outBy)).map(({ step }) => step.name)
  const developing = asked.find(({ development }) => development !== null)
  const [noIn, noOut] = [developing?.inBy, developing?.outBy].map((by) => by !== undefined && unknown(by))
  return [
    ...(developing !== undefined && (noIn || noOut)
      ? [
          {
            code: 'development-assumed',
            name: developing.step.name,
            side: noIn && noOut ? 'both' : noIn ? 'in' : 'out',
          } as const,
        ]
      : []),
    ...(names.length === 0 ? [] : [{ code: 'not-written', names: [...new Set(names)] } as const]),
  ]
}

function pouredInLate(laid: readonly Laid[], one: Laid, slacks: Slacks): Deviation[] {
  const before = bathBefore(laid, one.index)
  if (before === null || one.inBy !== 'pressed' || !isBath(one.step)) return []
  const expected = before.free + one.step.handling.cap.seconds + pourBefore(one.step)
  const by = one.in - expected
  const acts = laid.slice(before.index + 1, one.index).some(({ step }) => !isBath(step) && step.within === null)
  const slack = slackOf(slacks, one).in + slackOf(slacks, before).out
  return by > ON_TIME + slack && !acts ? [{ code: 'poured-in-late', name: one.step.name, by: by as Seconds }] : []
}

function pouredOut(one: Laid, slack: Slack): Deviation[] {
  if (!isBath(one.step) || one.outBy !== 'pressed') return []
  const by = one.out - one.due
  if (Math.abs(by) <= ON_TIME + slack.in + slack.out) return []
  const code = by > 0 ? 'poured-out-late' : 'poured-out-early'
  return [{ code, name: one.step.name, by: Math.abs(by) as Seconds, gained: gainedBy(one, by) }]
}

/** Development that `by` seconds more (or fewer) at the last temperature make, part of the plan. */
function gainedBy({ step, course, development, in: start, due }: Laid, by: number): number | null {
  if (course === null || development?.from !== 'basis' || !isBath(step)) return null
  const end = due + drainInside(step) - start
  const rate = rateOf(development.basis)(temperatureAt(course, end) as never)
  return rate.ok ? (rate.value * by) / development.target : null
}
