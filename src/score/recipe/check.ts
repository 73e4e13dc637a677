import { failed, ok, type Problem, problem, type Result, writeDuration } from '../../kernel/index.js'
import { turnLength } from './defaults.js'
import type { Agitation, Bath, Recipe, Step, Turn } from './definition.js'
import { hasFixedTime, isBath } from './kinds.js'
import { orderProblems } from './order.js'

/** What a list of baths can be at all; forms read it from here. Ours, to catch slips of the finger. */
export const RECIPE_LIMITS = {
  steps: { most: 60 },
  name: { most: 60 },
  reason: { most: 400 },
  time: { from: 5, to: 86_400 },
  handling: { from: 0, to: 300 },
  multiple: { from: 1, to: 5 },
  window: { from: 0, to: 60 },
} as const

/** A list that everything here may trust, or the first thing wrong with it. */
export function checkRecipe(recipe: Recipe): Result<Recipe> {
  const [first] = recipeProblems(recipe)
  return first === undefined ? ok(recipe) : failed(first)
}

/** Everything wrong with a list, each with the field it is about; empty when it can be run. */
export function recipeProblems(recipe: Recipe): Problem[] {
  const { steps } = recipe
  if (!steps.some(isBath)) return [problem('recipe.no-bath', {}, 'steps')]
  if (steps.length > RECIPE_LIMITS.steps.most)
    return [problem('recipe.too-many-steps', { count: steps.length, most: RECIPE_LIMITS.steps.most }, 'steps')]
  return [
    ...nameProblems(recipe.name, 'name'),
    ...steps.flatMap((step, i) => stepProblems(step, `steps[${i}]`)),
    ...orderProblems(recipe),
  ]
}

function nameProblems(name: string, field: string): Problem[] {
  const { most } = RECIPE_LIMITS.name
  return name.trim() === '' || name.length > most ? [problem('recipe.bad-name', { name, most }, field)] : []
}

function stepProblems(step: Step, field: string): Problem[] {
  const names = nameProblems(step.name, `${field}.name`)
  const { most } = RECIPE_LIMITS.reason
  const long =
    step.reason.length > most
      ? [problem('recipe.long-reason', { count: step.reason.length, most, name: step.name }, `${field}.reason`)]
      : []
  return [...names, ...long, ...(isBath(step) ? bathProblems(step, field) : actProblems(step, field))]
}

const outside = (value: number, { from, to }: { from: number; to: number }): boolean => !(value >= from && value <= to)

function actProblems(step: Exclude<Step, Bath>, field: string): Problem[] {
  if (!outside(step.length.seconds, RECIPE_LIMITS.time)) return []
  return [badTime(step.length.seconds, step.name, `${field}.length`)]
}

function bathProblems(bath: Bath, field: string): Problem[] {
  return [
    ...timeProblems(bath, `${field}.time`),
    ...handlingProblems(bath, `${field}.handling`),
    ...windowProblems(bath, `${field}.window`),
    ...agitationProblems(bath, `${field}.agitation`),
  ]
}

function timeProblems(bath: Bath, field: string): Problem[] {
  const { time, name } = bath
  if (time.law === 'by-developing-time')
    return hasFixedTime(bath) ? [problem('recipe.fixed-needs-seconds', { name }, field)] : []
  const shortest = time.law === 'fixed' ? time.seconds : time.least
  if (outside(shortest, RECIPE_LIMITS.time)) return [badTime(shortest, name, field)]
  if (shortest <= bath.handling.drain.seconds && bath.convention.ends === 'end-of-drain')
    return [
      problem(
        'recipe.shorter-than-drain',
        { name, time: say(shortest), drain: say(bath.handling.drain.seconds) },
        field,
      ),
    ]
  if (time.law === 'by-clearing' && (outside(time.multiple, RECIPE_LIMITS.multiple) || !(time.most >= time.least)))
    return [problem('recipe.bad-clearing', { name, ...RECIPE_LIMITS.multiple }, field)]
  return []
}

function handlingProblems({ handling, name }: Bath, field: string): Problem[] {
  const { pour, drain, cap, tap } = handling
  const wrong = [pour, drain, cap, tap].find((part) => part !== null && outside(part.seconds, RECIPE_LIMITS.handling))
  if (wrong === undefined || wrong === null) return []
  const { from, to } = RECIPE_LIMITS.handling
  return [problem('recipe.bad-handling', { name, time: say(wrong.seconds), from: say(from), to: say(to) }, field)]
}

function windowProblems({ window, name }: Bath, field: string): Problem[] {
  if (window === null) return []
  const { from, to } = RECIPE_LIMITS.window
  if (window.from >= from && window.from <= window.to && window.to <= to) return []
  const details = { name, from: { celsius: window.from }, to: { celsius: window.to } }
  return [problem('recipe.bad-window', details, field)]
}

function agitationProblems({ agitation, name }: Bath, field: string): Problem[] {
  const wrong = turnsOf(agitation).find((turn) => !(turnLength(turn) > 0 && turnLength(turn) <= 3600))
  if (wrong !== undefined) return [problem('recipe.bad-turn', { name }, field)]
  if (agitation.kind !== 'turns') return []
  const length = turnLength(agitation.turn)
  if (agitation.every >= 5 && length <= agitation.every) return []
  return [
    problem('recipe.turn-longer-than-interval', { name, length: say(length), every: say(agitation.every) }, field),
  ]
}

function turnsOf(agitation: Agitation): Turn[] {
  if (agitation.kind !== 'turns' && agitation.kind !== 'moments') return []
  const later = agitation.kind === 'turns' ? [agitation.turn] : agitation.moments.map(({ turn }) => turn)
  return [...(agitation.opening === null ? [] : [agitation.opening]), ...later]
}

function badTime(value: number, name: string, field: string): Problem {
  const { from, to } = RECIPE_LIMITS.time
  return problem('recipe.bad-time', { name, time: say(value), from: say(from), to: say(to) }, field)
}

const say = (value: number): string =>
  Number.isFinite(value) && value >= 0 ? writeDuration(value as never) : `${value} s`
