import { failed, nameKey, ok, problem, type Result } from '../../kernel/index.js'
import { type RollToLoad, stopOf, throughList } from '../../planning/index.js'
import type { AskedOnReel, AskedTank, FilmStatement, OnReel, PlanRun } from '../../wire/index.js'
import type { RollRecord } from '../rolls/port.js'
import type { Rooms } from '../store.js'

/** What is to go onto a reel, with the roll of the register that it is, if it is one. */
export interface Reel {
  readonly asked: AskedOnReel
  readonly roll: RollRecord | null
  readonly film: string
  /** The index it is developed as; null where nobody said. */
  readonly index: number | null
  readonly reel: number | null
}

/**
 * What goes onto the reels of every tank of a plan. Its rolls are held until the write ends, so that no other plan
 * takes them meanwhile. Refused: rolls for practice, a roll that is twice in the plan, in another plan that has not
 * ended, or past being loaded.
 */
export async function reelsOf(rooms: Rooms, { practice, tanks }: PlanRun): Promise<Result<Reel[][]>> {
  const ids = tanks.flatMap(({ on_reels }) => on_reels.flatMap(({ roll_id }) => roll_id ?? []))
  if (ids.length > 0 && practice !== null) return failed(problem('run.practice-with-rolls', {}, 'practice'))
  const held = await rooms.rolls.hold(ids)
  const free = await allFree(rooms, held)
  if (!free.ok) return free
  const taken = new Set<string>()
  const all: Reel[][] = []
  for (const [i, tank] of tanks.entries()) {
    const reels: Reel[] = []
    for (const [j, asked] of tank.on_reels.entries()) {
      const place = `tanks[${i}].on_reels[${j}]`
      const roll = held.find(({ id }) => id === asked.roll_id) ?? null
      const sound = reelOf(tank, asked, roll, taken, j)
      if (!sound.ok) return failed({ ...sound.problem, field: `${place}.${sound.problem.field}` })
      if (roll !== null) taken.add(roll.id)
      reels.push(sound.value)
    }
    all.push(reels.sort((a, b) => (a.reel ?? 0) - (b.reel ?? 0)))
  }
  return ok(all)
}

function reelOf(
  { reels }: AskedTank,
  asked: AskedOnReel,
  roll: RollRecord | null,
  taken: ReadonlySet<string>,
  position: number,
): Result<Reel> {
  const { roll_id, reel, film } = asked
  if (reel !== undefined && reel > reels) return failed(problem('run.no-such-reel', { reel, reels }, 'reel'))
  if (roll_id === undefined)
    return film === undefined
      ? failed(problem('run.reel-empty', {}, 'film'))
      : ok({ asked, roll: null, film, index: asked.exposure_index, reel: reel ?? null })
  if (roll === null) return failed(problem('record.not-found', { what: 'roll', id: roll_id }, 'roll_id'))
  if (taken.has(roll.id)) return failed(problem('run.roll-twice', { number: roll.number.text }, 'roll_id'))
  const { statement } = roll
  const index = statement.treatment.as === 'index' ? statement.treatment.index : statement.exposure_index
  return ok({ asked, roll, film: statement.film, index, reel: reel ?? Math.min(position + 1, reels) })
}

/** Plans that have not ended are few on a bench; more than these are not looked through. */
const OPEN_PLANS = 1000

async function allFree(rooms: Rooms, rolls: readonly RollRecord[]): Promise<Result<null>> {
  const past = rolls.find(({ state, runId }) => state !== 'taken-in' && !(state === 'loaded' && runId === null))
  if (past !== undefined)
    return failed(problem('run.roll-past', { number: past.number.text, state: past.state }, 'tanks'))
  if (rolls.length === 0) return ok(null)
  const planned = await plannedRolls(rooms)
  const taken = rolls.find(({ id }) => planned.has(id))
  return taken === undefined ? ok(null) : failed(problem('run.roll-planned', { number: taken.number.text }, 'tanks'))
}

/** The rolls of all plans that have not ended, each with the list it is to go through and what was said of it. */
export async function plannedRolls(rooms: Rooms): Promise<Map<string, Pick<AskedTank, 'recipe' | 'crosses_because'>>> {
  const open = await rooms.runs.newest({ film: null, ended: false, practice: false, before: null, most: OPEN_PLANS })
  return new Map(
    open.flatMap(({ plan }) =>
      plan.tanks.flatMap((tank) => tank.on_reels.flatMap(({ roll }) => (roll ? [[roll.roll_id, tank] as const] : []))),
    ),
  )
}

/**
 * Whether every roll may go through the list of its tank: the hard stop that no screen or command can go round. A film
 * that is only named is one's own, of the process that is kept of it; of one that nobody knows nothing is said.
 */
export function mayBeLoaded(
  { recipe, crosses_because, confirmed }: AskedTank,
  reels: readonly Reel[],
  films: readonly FilmStatement[],
): Result<null> {
  for (const [i, reel] of reels.entries()) {
    const facts = factsOf(reel, films)
    if (facts === null) continue
    const process = throughList(facts, recipe.process, crosses_because ?? '')
    if (!process.ok) return failed({ ...process.problem, field: `on_reels[${i}]` })
    const stop = stopOf(facts, confirmed ?? [])
    if (!stop.ok) return failed({ ...stop.problem, field: `on_reels[${i}]` })
  }
  return ok(null)
}

function factsOf({ roll, film: name }: Reel, films: readonly FilmStatement[]): RollToLoad | null {
  if (roll !== null) return { ...roll.statement, number: roll.number.text }
  const film = films.find((one) => nameKey(one.name) === nameKey(name))
  return film === undefined ? null : { number: film.name, process: film.process, whose: null, remarks: film.remarks }
}

/** What the plan keeps of a reel. */
export const keptOf = ({ asked, roll, film, index, reel }: Reel): OnReel => ({
  film,
  exposure_index: index,
  label: asked.label,
  ...(reel === null ? {} : { reel }),
  ...(roll === null ? {} : { roll: { roll_id: roll.id, number: roll.number.text } }),
})

/** Whether two are developed alike: the same film at the same index, with no time of its own. */
export const alike = (a: Reel, b: Reel): boolean =>
  nameKey(a.film) === nameKey(b.film) &&
  a.index === b.index &&
  a.asked.wants_s === b.asked.wants_s &&
  a.asked.time_id === b.asked.time_id &&
  contrastOf(a) === contrastOf(b)

const contrastOf = ({ roll }: Reel): number | null =>
  roll?.statement.treatment.as === 'contrast' ? roll.statement.treatment.contrast : null
