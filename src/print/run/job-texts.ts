import type { Agitation, Bath, Laid, Step, Turn } from '../../score/index.js'
import { say, type Writer } from '../../words/index.js'
import { type TankJob, type Turning, turningOf } from './timeline.js'

/** What the sheet says about one job. */
export interface JobTexts {
  readonly heading: string
  readonly todo: string
  readonly reason: string
  readonly cautions: readonly string[]
  /** What is written down beside the moment it was done. */
  readonly asks: 'nothing' | 'temperature' | 'clearing'
}

export const isBath = (step: Step): step is Bath => step.step === 'bath'

export function jobTexts(at: TankJob, ofSeveral: boolean, w: Writer): JobTexts {
  const { plan, one, job } = at
  const texts = ownTexts(at, w)
  if (!ofSeveral) return texts
  const heading = say('sheet.of-tank', { tank: plan.tank.tank, text: texts.heading }, w)
  return job.kind === 'turn' ? { ...texts, heading: one.step.name } : { ...texts, heading }
}

function ownTexts(at: TankJob, w: Writer): JobTexts {
  const { plan, one, job } = at
  const { step } = one
  const { name } = step
  const cautions = step.cautions.map((caution) => say(`caution.${caution}`, {}, w))
  if (isBath(step)) {
    if (job.kind === 'check')
      return {
        heading: say('sheet.job.check', { name }, w),
        todo: say('sheet.do.check', {}, w),
        reason: say('sheet.why.check', {}, w),
        cautions: [],
        asks: 'temperature',
      }
    if (job.kind === 'drain') {
      const todo = say(`sheet.do.out.${step.goesTo}`, {}, w)
      return {
        heading: say('sheet.job.out', { name }, w),
        todo,
        reason: say('sheet.why.drain', {}, w),
        cautions: [],
        asks: 'nothing',
      }
    }
    return { ...changeTexts(at, step, w), reason: step.reason, cautions, asks: asksOf(one, step) }
  }
  const { kind } = step
  const multiple = clearingMultiple(plan.laid, one.index)
  const todo = kind === 'look' ? say('sheet.do.look', { multiple }, w) : say(`sheet.do.${kind}`, {}, w)
  return { heading: name, todo, reason: step.reason, cautions, asks: kind === 'look' ? 'clearing' : 'nothing' }
}

const asksOf = (one: Laid, bath: Bath): JobTexts['asks'] =>
  one.development !== null || bath.window !== null ? 'temperature' : 'nothing'

/** How many times the clearing time the bath of a look stays in. */
function clearingMultiple(laid: readonly Laid[], index: number): number {
  const bath = laid.slice(0, index).findLast(({ step }) => isBath(step) && step.time.law === 'by-clearing')?.step
  return bath !== undefined && isBath(bath) && bath.time.law === 'by-clearing' ? bath.time.multiple : 2
}

function changeTexts({ plan, one, job, offset }: TankJob, bath: Bath, w: Writer) {
  const drained = job.parts.some(({ part }) => part === 'drain') ? bathBefore(plan.laid, one.index) : null
  const pour = job.parts.find(({ part }) => part === 'pour')
  return {
    heading: changeHeading(drained, bath, w),
    todo: [
      ...(drained === null ? [] : [say(`sheet.do.out.${drained.goesTo}`, {}, w)]),
      ...(pour === undefined ? [] : [say('sheet.do.pour', { from: offset + pour.start, to: offset + pour.end }, w)]),
      ...(job.parts.some(({ part }) => part === 'tap') ? [say('sheet.do.tap', {}, w)] : []),
      ...opening(one.agitation ?? bath.agitation, w),
    ].join(' '),
  }
}

function changeHeading(drained: Bath | null, { name, kind }: Bath, w: Writer): string {
  if (drained === null) return say('sheet.job.in', { name }, w)
  if (drained.kind === kind && drained.name === name) return say('sheet.job.refill', { name }, w)
  return say('sheet.job.change', { name, before: drained.name }, w)
}

function bathBefore(laid: readonly Laid[], index: number): Bath | null {
  const step = laid.slice(0, index).findLast(({ step: one, skipped }) => isBath(one) && !skipped)?.step
  return step !== undefined && isBath(step) ? step : null
}

/** The agitation that belongs to the pour. */
function opening(agitation: Agitation, w: Writer): string[] {
  switch (agitation.kind) {
    case 'none':
      return [say('sheet.do.still', {}, w)]
    case 'rotary':
      return [say('sheet.do.machine', {}, w)]
    case 'continuous':
      return [say('sheet.do.keep-turning', {}, w)]
    case 'then-continuous':
      return opening(agitation.before, w)
    case 'turns':
      return agitation.opening === null ? [] : [turnText(agitation.opening, w)]
    case 'moments':
      return [
        ...(agitation.opening === null ? [] : [turnText(agitation.opening, w)]),
        ...(agitation.moments.length === 0 ? [say('sheet.do.still', {}, w)] : []),
      ]
  }
}

const turnText = (turn: Turn, w: Writer): string =>
  turn.by === 'seconds'
    ? say('sheet.do.turn-seconds', { seconds: turn.seconds }, w)
    : say('sheet.do.turn-count', { count: turn.count }, w)

/** Over the moments of turns: what is done at each of them, tank by tank. */
export function turnsHeading(jobs: readonly TankJob[], ofSeveral: boolean, w: Writer): string {
  const tanks = [...new Map(jobs.map((job) => [job.plan.tank.tank, job])).entries()]
  const texts = tanks.map(([tank, job]) => {
    const text = turningText(job, turningOf(job), w)
    return ofSeveral ? say('sheet.of-tank', { tank, text }, w) : text
  })
  return say('sheet.turns', { texts }, w)
}

function turningText({ one, offset }: TankJob, turning: Turning, w: Writer): string {
  if ('until' in turning) return say('sheet.turns.until', { until: offset + one.in + turning.until }, w)
  return turning.turn.by === 'seconds'
    ? say('sheet.turns.seconds', { seconds: turning.turn.seconds }, w)
    : say('sheet.turns.count', { count: turning.turn.count }, w)
}
