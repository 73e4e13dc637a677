import type { Instant } from '../../../../kernel/index.js'
import type { FollowedJob, TankFollowing } from '../../../../score/index.js'
import { say } from '../../../../words/index.js'
import { stepName } from '../names.js'

/** Something to be heard at an instant: a tone, words, or both. */
export interface Cue {
  readonly id: string
  readonly at: Instant
  readonly tone: { readonly hertz: number; readonly seconds: number } | null
  /** At most four words. */
  readonly words: string | null
}

/** Hertz by the place of the tank: over running water and for old ears, and well apart. */
const PITCHES = [880, 659, 1175, 784, 1047, 587, 1319, 698] as const
const PIPS_MS = [3000, 2000, 1000] as const
const PIP_S = 0.15
const SIGNAL_S = 0.6
/** Before a bath change: time to fetch the next bath, then the reminder. */
const FETCH_MS = 30_000
const REMINDER_MS = 10_000

/**
 * What is to be heard of a tank, in the order of its jobs: three pips before each job, and two signals before a bath
 * change. While the tank waits for a confirmation everything after it moves, so nothing is promised. Of a tank that is
 * to begin beside others only its first pour is heard.
 */
export function cuesOf(tank: TankFollowing, place: number, tanks: number): Cue[] {
  const begins = tank.phase === 'not-started' && tanks > 1
  if ((tank.phase !== 'running' && !begins) || tank.next?.state === 'waiting') return []
  const hertz = PITCHES[place % PITCHES.length] ?? PITCHES[0]
  const coming = tank.jobs.filter(({ state }) => state === 'to-come')
  return (begins ? coming.slice(0, 1) : coming).flatMap((job) => ofJob(tank, job, hertz, tanks))
}

function ofJob(tank: TankFollowing, { job, at }: FollowedJob, hertz: number, tanks: number): Cue[] {
  const name = stepName(tank.plan.tank.recipe, job.index)
  const cue = (before: number, seconds: number | null, words: string | null): Cue => ({
    id: `${tank.tank}/${job.id}/${before}`,
    at: at - before,
    tone: seconds === null ? null : { hertz, seconds },
    words,
  })
  const pips = PIPS_MS.map((before) => cue(before, PIP_S, null))
  const several = tanks > 1
  const named = (words: string) => (several ? say('voice.tank', { tank: tank.tank, job: words }, 'metric') : words)
  if (job.kind !== 'change' && job.kind !== 'drain')
    return [...pips, cue(0, null, named(say(`voice.${job.kind}`, {}, 'metric')))]
  const drains = job.kind === 'drain' || job.parts.some(({ part }) => part === 'drain')
  const spoken = named(say(drains ? 'voice.pour-out' : 'voice.pour-in', {}, 'metric'))
  const fetch = job.kind === 'change' ? named(say('voice.fetch', { name, words: several ? 1 : 3 }, 'metric')) : null
  return [cue(FETCH_MS, SIGNAL_S, fetch), cue(REMINDER_MS, SIGNAL_S, null), ...pips, cue(0, null, spoken)]
}
