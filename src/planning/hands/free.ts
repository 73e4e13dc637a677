import { type Seconds, seconds } from '../../kernel/index.js'
import type { TankPlan } from '../../score/index.js'

/** Between a job at one tank and the next one at another: dry hands, two steps along the sink. Assumption. */
export const HANDS_GAP: Seconds = seconds(5)

type Planned = Pick<TankPlan, 'jobs'>
interface Placed extends Planned {
  readonly offset: number
}
interface Barred {
  readonly from: number
  readonly to: number
}

/**
 * When each tank may begin so that hands are never needed at two of them at once, seconds after the first one began;
 * the tanks keep the order in which they are given. A tank begins at the earliest second from which each of its jobs
 * stands clear of every job of the tanks before it, by a gap of five seconds.
 *
 * There always is such a moment: at the latest when everything before is over. It is the earliest for each tank in its
 * turn; another order may take less in all, and so would turns that give way or washes that last longer, which this
 * does not touch. Jobs of a machine are none. Three baths fit into an hour of stand development a minute and a half
 * after its pour; beside three baths whose fixer is turned each half minute there is no room for a bath change.
 *
 * Cost: the product of the jobs of every two tanks.
 */
export function startsWithFreeHands(tanks: readonly Planned[], gap: Seconds = HANDS_GAP): Seconds[] {
  const placed: Placed[] = []
  for (const tank of tanks) {
    const before = placed.at(-1)?.offset ?? 0
    placed.push({ ...tank, offset: earliest(before, barredBy(placed, tank, gap)) })
  }
  return placed.map(({ offset }) => seconds(offset))
}

/** The beginnings at which a job of this tank would meet one of those that have their place. */
const barredBy = (placed: readonly Placed[], { jobs }: Planned, gap: number): Barred[] =>
  placed.flatMap(({ offset, jobs: theirs }) =>
    theirs.flatMap((their) =>
      jobs.map((own) => ({ from: offset + their.start - gap - own.end, to: offset + their.end + gap - own.start })),
    ),
  )

/** The earliest whole second, at or after `from`, that lies inside no barred stretch. Touching one is no meeting. */
function earliest(from: number, barred: readonly Barred[]): number {
  let at = Math.ceil(from)
  for (const { from: begin, to } of [...barred].sort((a, b) => a.from - b.from)) {
    // In the order of their beginnings, those that begin later cannot bar what has been passed already.
    if (begin >= at - SAME) break
    if (to > at + SAME) at = Math.ceil(to - SAME)
  }
  return at
}

/** Ends of jobs are sums of parts: nearer than this they are one moment, seconds. */
const SAME = 1e-6
