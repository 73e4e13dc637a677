import type { Result } from '../../../../kernel/index.js'
import { plan, type RunEvent, type Score, type TankWish } from '../../../../score/index.js'
import type { Run } from '../../../shared/api/index.js'

/** The score of a run: the same one as the server's. Numbers of the interface are the score's own. */
export const scoreOf = (run: Run): Result<Score> => plan(run.plan.tanks as unknown as readonly TankWish[])

export const eventOf = (kept: Run['events'][number]): RunEvent => kept.event as unknown as RunEvent
