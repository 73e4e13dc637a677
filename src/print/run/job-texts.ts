import {
  type Act,
  type Agitation,
  type Bath,
  changeOf,
  isBath,
  type Laid,
  type Step,
  type Turn,
} from '../../score/index.js'
import { say, type Writer } from '../../words/index.js'
import { momentOf, type TankJob, turnOf } from './timeline.js'

/** What the sheet says about one job. */
export interface JobTexts {
  readonly heading: string
  readonly todo: string
  readonly reason: string
  readonly cautions: readonly string[]
  /** What is written down beside the moment it was done. */
  readonly asks: 'nothing' | 'temperature' | 'clearing'
}

export function jobTexts(at: TankJob, ofSeveral: boolean, w: Writer): JobTexts {
  const { step } = at.one
  const texts = isBath(step) ? bathTexts(at, step, w) : actTexts(at, step, w)
  if (!ofSeveral) return texts
  return { ...texts, heading: say('sheet.of-tank', { tank: at.plan.tank.tank, text: texts.heading }, w) }
}

function bathTexts(at: TankJob, bath: Bath, w: Writer): JobTexts {
  const { name } = bath
  if (at.job.kind === 'check')
    return {
      heading: say('sheet.job.check', { name }, w),
      todo: say('sheet.do.check', {}, w),
      reason: say('sheet.why.check', {}, w),
      cautions: [],
      asks: 'temperature',
    }
  if (at.job.kind === 'drain')
    return {
      heading: say('sheet.job.out', { name }, w),
      todo: say(`sheet.do.out.${bath.goesTo}`, {}, w),
      reason: say('sheet.why.drain', {}, w),
      cautions: [],
      asks: 'nothing',
    }
  return {
    ...changeTexts(at, bath, w),
    reason: bath.reason,
    cautions: cautionsOf(bath, w),
    asks: asksOf(at.one, bath),
  }
}

function actTexts({ plan, one }: TankJob, act: Act, w: Writer): JobTexts {
  const { kind, name, reason } = act
  const looks = kind === 'look'
  return {
    heading: name,
    todo: looks
      ? say('sheet.do.look', { multiple: clearingMultiple(plan.laid, one.index) }, w)
      : say(`sheet.do.${kind}`, {}, w),
    reason,
    cautions: cautionsOf(act, w),
    asks: looks ? 'clearing' : 'nothing',
  }
}

const cautionsOf = ({ cautions }: Step, w: Writer): string[] =>
  cautions.map((caution) => say(`caution.${caution}`, {}, w))

const asksOf = (one: Laid, bath: Bath): JobTexts['asks'] =>
  one.development !== null || bath.window !== null ? 'temperature' : 'nothing'

/** How many times the clearing time the bath of a look stays in. */
function clearingMultiple(laid: readonly Laid[], index: number): number {
  const bath = laid.slice(0, index).findLast(({ step }) => isBath(step) && step.time.law === 'by-clearing')?.step
  return bath !== undefined && isBath(bath) && bath.time.law === 'by-clearing' ? bath.time.multiple : 2
}

function changeTexts({ plan, one, job, offset }: TankJob, bath: Bath, w: Writer) {
  const { how, drained, ...names } = changeOf(plan.laid, job)
  const pour = job.parts.find(({ part }) => part === 'pour')
  return {
    heading: say(`sheet.job.${how}`, names, w),
    todo: [
      ...(drained === null ? [] : [say(`sheet.do.out.${drained.step.goesTo}`, {}, w)]),
      ...(pour === undefined ? [] : [say('sheet.do.pour', { from: offset + pour.start, to: offset + pour.end }, w)]),
      ...(job.parts.some(({ part }) => part === 'tap') ? [say('sheet.do.tap', {}, w)] : []),
      ...opening(one.agitation ?? bath.agitation, w),
    ].join(' '),
  }
}

/** How a bath is turned right after its pour, in a sentence. */
export const openingOf = ({ one }: TankJob, w: Writer): string =>
  isBath(one.step) ? opening(one.agitation ?? one.step.agitation, w).join(' ') : ''

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
  const tanks = [...new Map(jobs.map((job) => [job.plan.tank.tank, job])).values()]
  const texts = tanks.map((job) => ofBath(job, turningText(job, w), ofSeveral, w))
  return say('sheet.turns', { texts }, w)
}

/** A turning that goes on from the pour to the pour-out, in one line. */
export function turnedOn(job: TankJob, until: number, ofSeveral: boolean, w: Writer): string {
  const text = say('sheet.turns.on', { from: momentOf(job), until }, w)
  return ofBath(job, text, ofSeveral, w)
}

function ofBath({ plan, one }: TankJob, text: string, ofSeveral: boolean, w: Writer): string {
  const { name } = one.step
  return ofSeveral
    ? say('sheet.turns.of-tank', { tank: plan.tank.tank, name, text }, w)
    : say('sheet.turns.of', { name, text }, w)
}

function turningText(job: TankJob, w: Writer): string {
  const turn = turnOf(job)
  if (turn === null) return ''
  return turn.by === 'seconds'
    ? say('sheet.turns.seconds', { seconds: turn.seconds }, w)
    : say('sheet.turns.count', { count: turn.count }, w)
}
