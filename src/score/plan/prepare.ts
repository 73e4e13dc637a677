import { andThen, type Celsius, failed, ok, problem, type Result, writeDuration } from '../../kernel/index.js'
import { developingTime } from '../../science/index.js'
import { checkRecipe } from '../recipe/check.js'
import type { Bath, Recipe } from '../recipe/definition.js'
import { hasFixedTime, isBath } from '../recipe/kinds.js'
import type { Development, DevelopmentWish, Room, Tank, TankConditions } from './definition.js'

/** What conditions can be at all. Ours, to catch slips of the finger. */
export const CONDITION_LIMITS = {
  ownTime: { from: 5, to: 86_400 },
  temperature: { from: 0, to: 60 },
  timeConstant: { from: 300, to: 86_400 },
} as const

/**
 * The conditions of one tank, checked and resolved. Refused: a list that `checkRecipe` refuses, a developing time
 * where the list has none to take it (colour and reversal developers never move theirs) or none where it needs
 * one, a reference time of another kind of developer, and temperatures, rooms and ids that cannot be.
 */
export function prepare(recipe: Recipe, conditions: TankConditions): Result<Tank> {
  return andThen(checkRecipe(recipe), () =>
    andThen(checkTemperatures(recipe, conditions), () =>
      andThen(checkRoom(conditions.room ?? null), (room) =>
        andThen(development(recipe, conditions.development, room), (resolved) =>
          ok({
            tank: conditions.tank,
            offset: conditions.offset ?? 0,
            recipe,
            development: resolved,
            temperatures: conditions.temperatures ?? {},
            volume: conditions.volume ?? null,
            clearing: conditions.clearing ?? null,
            checks: conditions.checks ?? [],
          }),
        ),
      ),
    ),
  )
}

function checkTemperatures(recipe: Recipe, { temperatures }: TankConditions): Result<null> {
  for (const [id, temperature] of Object.entries(temperatures ?? {})) {
    const step = recipe.steps.find((one) => one.id === id)
    if (step === undefined) return failed(problem('score.unknown-step', { id }, `temperatures.${id}`))
    const { from, to } = CONDITION_LIMITS.temperature
    if (!(temperature >= from && temperature <= to)) {
      const details = { temperature: { celsius: temperature }, name: step.name }
      return failed(problem('score.bad-temperature', details, `temperatures.${id}`))
    }
  }
  return ok(null)
}

function checkRoom(room: Room | null): Result<Room | null> {
  if (room === null) return ok(null)
  const { temperature, timeConstant } = CONDITION_LIMITS
  const possible =
    room.temperature >= temperature.from &&
    room.temperature <= temperature.to &&
    room.timeConstant >= timeConstant.from &&
    room.timeConstant <= timeConstant.to
  if (possible) return ok(room)
  const details = { temperature: { celsius: room.temperature }, tau: `${room.timeConstant} s` }
  return failed(problem('score.bad-room', details, 'room'))
}

function development(recipe: Recipe, wish: DevelopmentWish | null, room: Room | null): Result<Development | null> {
  const baths = recipe.steps.filter(isBath)
  const timed = baths.find(({ time }) => time.law === 'by-developing-time')
  if (timed === undefined) return wish === null ? ok(null) : failed(cannotMove(baths))
  if (wish === null) return failed(problem('score.no-developing-time', { name: timed.name }, 'development'))
  return wish.from === 'own' ? own(wish) : fromBasis(timed, wish, room)
}

function cannotMove(baths: readonly Bath[]) {
  const fixed = baths.find(hasFixedTime)
  if (fixed === undefined || fixed.time.law !== 'fixed') return problem('score.no-developer', {}, 'development')
  return problem('score.fixed-time', { name: fixed.name, time: writeDuration(fixed.time.seconds) }, 'development')
}

function own(wish: Extract<DevelopmentWish, { from: 'own' }>): Result<Development> {
  const { from, to } = CONDITION_LIMITS.ownTime
  if (wish.time >= from && wish.time <= to) return ok(wish)
  const details = { time: `${wish.time} s`, from: writeDuration(from as never), to: writeDuration(to as never) }
  return failed(problem('score.bad-own-time', details, 'development.time'))
}

const KINDS = { ordinary: 'an ordinary developer', 'single-bath': 'a single bath', fixed: 'a fixed time' } as const

function fromBasis(
  bath: Bath,
  wish: Extract<DevelopmentWish, { from: 'basis' }>,
  room: Room | null,
): Result<Development> {
  const { basis, temperature } = wish
  const modifiers = wish.modifiers ?? []
  const single = bath.kind === 'single-bath'
  if (single !== (basis.kind === 'single-bath')) {
    const details = { given: KINDS[basis.kind], wanted: KINDS[single ? 'single-bath' : 'ordinary'] }
    return failed(problem('score.wrong-kind', details, 'development.basis'))
  }
  if (basis.kind === 'fixed' && modifiers.length > 0) {
    const details = { name: bath.name, time: writeDuration(basis.reference.time) }
    return failed(problem('score.fixed-time', details, 'development.modifiers'))
  }
  const start = wish.course?.[0]?.temperature ?? temperature
  return andThen(developingTime(basis, start as Celsius, { modifiers }), (answer) => {
    const target = modifiers.reduce((time: number, { factor }) => time * factor, basis.reference.time)
    const course = { start: start as Celsius, points: wish.course ?? null, room }
    return ok({ from: 'basis', basis, target: target as never, course, answer })
  })
}
