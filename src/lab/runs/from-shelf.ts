import { failed, nameKey, ok, problem, type Result } from '../../kernel/index.js'
import { type BathKind, isBath } from '../../score/index.js'
import type { AskedTank, FromShelf, MetFilm, ProductStatement } from '../../wire/index.js'
import { filmTakes, toLedger, toRolls } from '../shelf/amounts.js'
import { type Held, isUsedOnce, wrongLot, wrongRole } from '../shelf/guards.js'
import { carriesOf } from '../shelf/limits.js'
import { carriesNoMore, holdingContainer, legOf, nameOf, notEnough } from '../shelf/posting.js'
import type { Rooms } from '../store.js'
import type { Reel } from './reels.js'

type Role = ProductStatement['role']
/** What a bath of each kind is filled from; what is not here is water, or is mixed for the moment. */
const ROLES: Partial<Record<BathKind, Role>> = {
  developer: 'developer',
  'single-bath': 'developer',
  'bath-a': 'developer',
  'first-developer': 'developer',
  'colour-developer': 'developer',
  'second-developer': 'developer',
  stop: 'stop',
  bleach: 'bleach',
  reversal: 'other',
  'pre-bleach': 'other',
  clear: 'other',
  'bath-b': 'other',
  fix: 'fixer',
  'wash-aid': 'wash-aid',
  wetting: 'wetting-agent',
}

/** What is taken of each bottle by the tanks of a plan so far: they share it. */
export type Taken = Map<string, { poured: number; worked: number }>

type Asked = NonNullable<AskedTank['from_shelf']>[number]

/**
 * The bottles that the baths of a tank come from, as they stand when it is planned. Refused, with the ways out: a bottle
 * of another role or another lot than was named, one that does not hold enough, and a bath that cannot carry the film.
 */
export async function bathsFromShelf(
  rooms: Rooms,
  { recipe, conditions, from_shelf = [] }: AskedTank,
  reels: readonly Reel[],
  taken: Taken,
): Promise<Result<FromShelf[]>> {
  const film = await filmOn(rooms, reels)
  const baths: FromShelf[] = []
  for (const [i, asked] of from_shelf.entries()) {
    const field = `from_shelf[${i}]`
    const bath = recipe.steps[asked.step]
    const role = roleOf(bath)
    if (bath === undefined || role === null || baths.some(({ step }) => step === asked.step))
      return failed(problem('run.no-such-bath', { step: asked.step + 1 }, `${field}.step`))
    const poured = asked.poured_ml ?? conditions.volume ?? null
    if (poured === null) return failed(problem('run.bath-volume', { bath: bath.name }, `${field}.poured_ml`))
    const found = await fitting(rooms, { ...asked, poured_ml: poured }, role, film, taken, field)
    if (!found.ok) return found
    const { container, lot, product } = found.value
    baths.push({
      ...{ step: asked.step, container_id: container.id, name: nameOf(found.value), poured_ml: poured },
      ...{ lot_id: lot?.id ?? null, code: lot?.code ?? null, product: product.name, film },
    })
  }
  return ok(baths)
}

async function fitting(
  rooms: Rooms,
  asked: Asked & { readonly poured_ml: number },
  role: Role,
  film: readonly MetFilm[],
  taken: Taken,
  field: string,
): Promise<Result<Held>> {
  const place = `${field}.container_id`
  const found = await holdingContainer(rooms, asked.container_id, place)
  if (!found.ok) return found
  const { container, product } = found.value
  const wrong = wrongRole(found.value, role, place) ?? wrongLot(found.value, asked.lot_id, `${field}.lot_id`)
  if (wrong !== null) return wrong
  const takes = filmTakes(film, product.family_capacity)
  if (!takes.ok) return takes
  const before = taken.get(container.id) ?? { poured: 0, worked: 0 }
  const now = sharedBy(found.value, before, { poured: toLedger(asked.poured_ml), worked: takes.value.worked })
  taken.set(container.id, now)
  if (now.poured > container.held) return failed(notEnough(found.value, now.poured, place))
  const carries = carriesOf(product, container.basis)
  if (carries === null || container.worked + now.worked <= carries) return found
  return failed({ ...(await carriesNoMore(rooms, found.value, legOf(container, now), carries)), field: place })
}

/** What is used once adds up; what goes back is there again for the next tank, but its film adds up. */
function sharedBy(found: Held, before: { poured: number; worked: number }, one: typeof before) {
  return {
    poured: isUsedOnce(found) ? before.poured + one.poured : Math.max(before.poured, one.poured),
    worked: before.worked + one.worked,
  }
}

/** What is on the reels, as a bath counts it; a film by its name alone is a roll. */
async function filmOn(rooms: Rooms, reels: readonly Reel[]): Promise<MetFilm[]> {
  const films = await rooms.films.all()
  return reels.map(({ film, roll }) => {
    const kept = films.find(({ statement }) => nameKey(statement.name) === nameKey(film))
    const family = kept?.statement.fixing === 'fast-using' ? 'tabular' : 'ordinary'
    if (roll === null) return { format: '135', frames: null, count: 1, family }
    const { format, frames, sheets } = roll.statement
    return { format, frames, count: sheets, family }
  })
}

/** How much longer the developer of a tank takes for what it has met already; 1 where it does not. */
export async function longerBy(
  rooms: Rooms,
  { recipe }: Pick<AskedTank, 'recipe'>,
  baths: readonly FromShelf[],
): Promise<number> {
  const developer = baths.find(({ step }) => roleOf(recipe.steps[step]) === 'developer')
  const found = developer && (await holdingContainer(rooms, developer.container_id, 'from_shelf'))
  if (!found?.ok) return 1
  const { container, product } = found.value
  return 1 + ((product.longer_percent_per_roll ?? 0) / 100) * toRolls(container.met)
}

const roleOf = (step: AskedTank['recipe']['steps'][number] | undefined): Role | null =>
  step !== undefined && isBath(step) ? (ROLES[step.kind] ?? null) : null
