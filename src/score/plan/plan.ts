import { all, andThen, failed, ok, problem, type Result, type Seconds } from '../../kernel/index.js'
import type { Recipe } from '../recipe/definition.js'
import { isBath } from '../recipe/kinds.js'
import type { BathSpan, Facts, Laid, Score, ScoreWarning, Tank, TankConditions, TankPlan } from './definition.js'
import { jobsOf } from './jobs.js'
import { layOut } from './lay-out.js'
import { prepare } from './prepare.js'
import { judgeSpread } from './spread.js'

/** A tank to plan: its list of baths and what it is run under. */
export interface TankWish {
  readonly recipe: Recipe
  readonly conditions: TankConditions
}

/**
 * The score of one or more tanks: every job at its second, counted from each tank's first pour.
 *
 * Refused: no tank, two of one name, whatever `prepare` refuses, a developing time that cannot be reached, and
 * baths too far apart in temperature unless the person overrides. Everything milder is a warning.
 */
export function plan(wishes: readonly TankWish[]): Result<Score> {
  if (wishes.length === 0) return failed(problem('score.no-tank'))
  const double = namedTwice(wishes.map(({ conditions }) => conditions.tank))
  if (double !== undefined) return failed(problem('score.same-tank', { tank: double }))
  return andThen(all(wishes.map(planTank)), (planned) =>
    ok(
      scoreOf(
        planned.map(({ tank }) => tank),
        planned.flatMap(({ warnings }) => warnings),
      ),
    ),
  )
}

/** Scores with the second at which the first pour of each is to be. */
export interface Beginning {
  readonly score: Score
  readonly offset: Seconds
}

/** One score of several: what each tank does stands as it is, only its beginning moves. Refused: a name twice. */
export function joined(parts: readonly Beginning[]): Result<Score> {
  const tanks = parts.flatMap(({ score, offset }) =>
    score.tanks.map((plan) => ({ ...plan, tank: { ...plan.tank, offset } })),
  )
  if (tanks.length === 0) return failed(problem('score.no-tank'))
  const double = namedTwice(tanks.map(({ tank }) => tank.tank))
  if (double !== undefined) return failed(problem('score.same-tank', { tank: double }))
  const warnings = parts.flatMap(({ score }) => score.warnings)
  return ok(scoreOf(tanks, warnings))
}

const namedTwice = (names: readonly string[]): string | undefined => names.find((name, i) => names.indexOf(name) !== i)

const scoreOf = (tanks: readonly TankPlan[], warnings: readonly ScoreWarning[]): Score => ({
  tanks,
  warnings,
  length: Math.max(...tanks.map(({ tank, length }) => tank.offset + length)) as Seconds,
  handsBusy: handsBusy(tanks) as Seconds,
})

const NOTHING_YET: Facts = new Map()

function planTank({ recipe, conditions }: TankWish): Result<{ tank: TankPlan; warnings: readonly ScoreWarning[] }> {
  const tank = prepare(recipe, conditions)
  if (!tank.ok) return tank
  const spread = judgeSpread(tank.value, conditions.overridesSpread ?? false)
  if (spread.refusal !== null) return failed(spread.refusal)
  const laid = layOut(tank.value, NOTHING_YET, null)
  if (!laid.ok) return laid
  const warnings = [...developmentWarnings(tank.value), ...fixerWarnings(tank.value), ...spread.warnings]
  return ok({ tank: tankPlan(tank.value, laid.value), warnings })
}

/** A tank's plan from its steps laid out; also what a run has become. */
export function tankPlan(tank: Tank, laid: readonly Laid[]): TankPlan {
  return {
    tank,
    laid,
    baths: laid.filter(({ step, skipped }) => isBath(step) && !skipped).map(spanOf),
    jobs: jobsOf(tank, laid),
    length: Math.max(...laid.map(({ free }) => free)),
  }
}

const spanOf = ({ index, step, in: clockStart, out, clockEnd, free }: Laid): BathSpan => ({
  index,
  id: step.id,
  name: step.name,
  clockStart,
  drainStart: out,
  clockEnd,
  drainEnd: free,
})

function developmentWarnings({ tank, development }: Tank): ScoreWarning[] {
  if (development === null || development.from === 'own') return []
  return development.answer.warnings.map((warning) => ({ code: 'development', tank, warning }))
}

/** A fixer that needs longer than its law's most is finished, by the film itself. */
function fixerWarnings({ tank, clearing, recipe }: Tank): ScoreWarning[] {
  if (clearing === null) return []
  return recipe.steps.flatMap((step): ScoreWarning[] => {
    if (!isBath(step) || step.time.law !== 'by-clearing') return []
    const needed = step.time.multiple * clearing
    return needed > step.time.most
      ? [{ code: 'fixer-finished', tank, needed: needed as Seconds, most: step.time.most }]
      : []
  })
}

/** Seconds in which hands are at some tank; machines turn by themselves. Cost: n log n. */
function handsBusy(tanks: readonly TankPlan[]): number {
  const spells = tanks
    .flatMap(({ tank, jobs }) => jobs.map(({ start, end }) => [tank.offset + start, tank.offset + end] as const))
    .sort(([a], [b]) => a - b)
  let [busy, until] = [0, Number.NEGATIVE_INFINITY]
  for (const [start, end] of spells) {
    busy += Math.max(0, end - Math.max(start, until))
    until = Math.max(until, end)
  }
  return busy
}
