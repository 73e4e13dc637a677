import type { Following, TankFollowing } from '../../../../score/index.js'

/** Tanks that still ask for something, in the order of the plan. */
export const openTanks = ({ tanks }: Following): TankFollowing[] =>
  tanks.filter(({ phase }) => phase !== 'done' && phase !== 'abandoned')

/** A tank that was chosen by hand, and the job that was next then. */
export interface ChosenTank {
  readonly tank: string
  readonly next: string
}

/** The job that is next anywhere; a choice made by hand holds until it changes. */
export const nextKey = ({ next }: Following): string => (next === null ? '' : `${next.tank}/${next.job.job.id}`)

/**
 * Which tank the screen shows: before the run begins its first; then the one chosen by hand, else the one that hands are
 * at, else the one that is next to need them. Null when every tank is over.
 */
export function shownTank(following: Following, chosen: ChosenTank | null): TankFollowing | null {
  const open = openTanks(following)
  if (hasNotBegun(following)) return firstOf(open)
  const named = (name: string | undefined) => open.find(({ tank }) => tank === name)
  const atHand = open.find(({ jobs }) => jobs.some(({ state }) => state === 'now'))
  const byHand = chosen?.next === nextKey(following) ? named(chosen.tank) : undefined
  return byHand ?? atHand ?? named(following.next?.tank) ?? open[0] ?? null
}

/** Whether no tank of the run has begun yet. */
export const hasNotBegun = ({ tanks }: Following): boolean => tanks.every(({ phase }) => phase === 'not-started')

const firstOf = (tanks: readonly TankFollowing[]): TankFollowing | null =>
  [...tanks].sort((a, b) => a.plan.tank.offset - b.plan.tank.offset)[0] ?? null
