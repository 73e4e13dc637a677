import { failed, nameKey, ok, problem, type Result, type Seconds, seconds } from '../../kernel/index.js'
import { servedAt, sharedTime, type Wanted } from '../../planning/index.js'
import { developingTime, type Modifier, type TimeBasis } from '../../science/index.js'
import type { AskedTank, OnReel } from '../../wire/index.js'
import type { Rooms } from '../store.js'
import { standingTime } from '../times/answer.js'
import type { TimeRecord } from '../times/port.js'
import { basisOf } from '../times/rules.js'
import { toleranceOf } from '../times/tolerance.js'
import { alike, keptOf, type Reel } from './reels.js'

/** The time one film would be developed for alone, and the kept time that says so. */
export interface Own {
  readonly reel: Reel
  /** Null where nothing says it. */
  readonly time: Seconds | null
  readonly from: { readonly record: TimeRecord; readonly basis: TimeBasis } | null
}

type Bath = Pick<AskedTank, 'developer' | 'dilution_parts'> & { readonly temperature: number | null }

/** Whether what is in a tank is not all developed alike. */
export const isMixed = (reels: readonly Reel[]): boolean => reels.some((reel) => !alike(reel, reels[0] as Reel))

/**
 * The time that each film wants in this bath: as stated, by the kept time that was named, else by the kept time of
 * this film at this index in this developer. A roll of the register of which nothing says it is refused: whether it
 * shares a tank cannot be judged. A film that only bears a label passes unjudged.
 */
export async function ownTimes(rooms: Rooms, reels: readonly Reel[], bath: Bath): Promise<Result<Own[]>> {
  const kept = await rooms.times.all()
  const own: Own[] = []
  for (const [i, reel] of reels.entries()) {
    const found = await ownTime(rooms, kept, reel, bath)
    if (!found.ok) return failed({ ...found.problem, field: `on_reels[${i}]` })
    if (found.value.time === null && reel.roll !== null)
      return failed(problem('loads.time-unknown', { film: nameOf(reel) }, `on_reels[${i}].wants_s`))
    own.push(found.value)
  }
  return ok(own)
}

async function ownTime(rooms: Rooms, kept: readonly TimeRecord[], reel: Reel, bath: Bath): Promise<Result<Own>> {
  const { wants_s, time_id } = reel.asked
  if (wants_s !== undefined) return ok({ reel, time: wants_s, from: null })
  const record = time_id === undefined ? ok(keptTimeOf(kept, reel, bath)) : await standingTime(rooms, time_id)
  if (!record.ok) return record
  if (record.value === null) return ok({ reel, time: null, from: null })
  const basis = basisOf(record.value)
  if (!basis.ok) return basis
  const at = bath.temperature ?? basis.value.reference.temperature
  const answer = developingTime(basis.value, at as typeof basis.value.reference.temperature)
  return answer.ok ? ok({ reel, time: answer.value.time, from: { record: record.value, basis: basis.value } }) : answer
}

function keptTimeOf(kept: readonly TimeRecord[], reel: Reel, bath: Bath): TimeRecord | null {
  // A contrast of its own is nothing that a kept time knows of.
  if (reel.roll?.statement.treatment.as === 'contrast') return null
  const parts = JSON.stringify(bath.dilution_parts)
  return (
    kept.find(
      ({ film, exposureIndex, developer, dilutionParts }) =>
        nameKey(film) === nameKey(reel.film) &&
        exposureIndex === reel.index &&
        nameKey(developer) === nameKey(bath.developer) &&
        JSON.stringify(dilutionParts) === parts,
    ) ?? null
  )
}

const nameOf = ({ film, index, roll }: Reel): string =>
  [roll?.number.text, film, index === null ? undefined : `at ${index}`].filter(Boolean).join(' ')

async function wantedOf(rooms: Rooms, own: readonly Own[]): Promise<Wanted[]> {
  const films = (await rooms.films.all()).map(({ statement }) => statement)
  return own.flatMap(({ reel, time }) =>
    time === null ? [] : [{ name: nameOf(reel), time, tolerance: toleranceOf(films, reel.film, time) }],
  )
}

/** How long to develop so that every film departs least: by a kept time where one says so, else a plain time. */
export type Shared =
  | { readonly from: 'own'; readonly time: Seconds }
  | { readonly from: 'kept'; readonly record: TimeRecord; readonly basis: TimeBasis; readonly modifiers: Modifier[] }

export async function sharedDevelopment(rooms: Rooms, own: readonly Own[]): Promise<Result<Shared>> {
  const shared = sharedTime(await wantedOf(rooms, own))
  if (!shared.ok) return shared
  const { time } = shared.value
  const first = own.find(({ from }) => from !== null)
  if (first?.from == null || first.time === null) return ok({ from: 'own', time })
  const note = `one time for ${own.length} films`
  const modifiers: Modifier[] = [{ name: 'other', factor: time / first.time, origin: 'assumption', note }]
  return ok({ from: 'kept', ...first.from, modifiers })
}

/** What each film of a mixed tank gets against what it wants, as the plan keeps it; refused beyond a tolerance. */
export async function withDepartures(rooms: Rooms, own: readonly Own[], served: Seconds): Promise<Result<OnReel[]>> {
  const judged = servedAt(served, await wantedOf(rooms, own))
  if (!judged.ok) return judged
  return ok(
    own.map(({ reel, time }) =>
      time === null
        ? keptOf(reel)
        : { ...keptOf(reel), wants_s: seconds(time), departs: Math.round((served / time - 1) * 1e6) / 1e6 },
    ),
  )
}
