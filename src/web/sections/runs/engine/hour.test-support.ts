import { celsius, expectOk, seconds } from '../../../../kernel/index.js'
import {
  fold,
  follow,
  type Happening,
  plan,
  type Recipe,
  type RunEvent,
  type Score,
  SHIPPED_RECIPES,
} from '../../../../score/index.js'
import { type Cue, cuesOf } from './cues.js'

export const NOON = Date.UTC(2026, 2, 1, 12)
export const HOUR_S = 3600

const isTimed = ({ steps }: Recipe) =>
  steps.some((step) => step.step === 'bath' && step.time.law === 'by-developing-time')

/** A score of so many tanks, with a developing time of one's own where the list takes one. */
export function scoreFor(recipe: Recipe, time: number, tanks = ['A']): Score {
  const own = { from: 'own', time: seconds(time), temperature: celsius(20) } as const
  const development = isTimed(recipe) ? own : null
  return expectOk(plan(tanks.map((tank) => ({ recipe, conditions: { tank, development } }))))
}

/** Something that happened in tank A so many seconds after noon. */
export const happenedAt = (second: number, bath: number | null, happening: Happening): RunEvent => ({
  id: `${second}/${bath}/${happening.kind}`,
  device: 'd',
  life: 'l',
  monotonicMs: second * 1000,
  wallMs: NOON + second * 1000,
  serverOffsetMs: NOON,
  tank: 'A',
  bath,
  actor: 'x',
  ...happening,
})

/** What is to be heard in the hour from noon, when a developer that takes 52 minutes has just gone in. */
export function cuesOfAnHour(): Cue[] {
  const score = scoreFor(SHIPPED_RECIPES[0] as Recipe, 52 * 60)
  const events = [happenedAt(0, 0, { kind: 'poured-in' })]
  const { tanks } = follow(score, fold(score, events), NOON)
  return tanks.flatMap((tank) => cuesOf(tank, 0, 1)).filter(({ at }) => at >= NOON && at < NOON + HOUR_S * 1000)
}
