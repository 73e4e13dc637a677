import { all, type Result, type Seconds } from '../../../../kernel/index.js'
import { startsWithFreeHands } from '../../../../planning/index.js'
import { joined, type Score } from '../../../../score/index.js'
import type { PlanRunInput } from '../../../shared/api/index.js'

/** What is read of each tank by itself. */
interface TankRead {
  readonly score: Result<Score> | null
  readonly asked: PlanRunInput | null
}

/** The plan of all tanks on one pair of hands. */
export interface Together {
  /** Null while a tank lacks its developing time. */
  readonly score: Result<Score> | null
  /** What to ask the bench for, once nothing is wrong with any tank. */
  readonly asked: PlanRunInput | null
}

/** Tanks read one by one, each begun as soon as hands are never needed at two of them at once. */
export function readTogether(readings: readonly TankRead[]): Together {
  const [only, ...others] = readings
  if (only === undefined || others.length === 0) return only ?? { score: null, asked: null }
  const scores = readings.flatMap(({ score }) => (score === null ? [] : [score]))
  if (scores.length < readings.length) return { score: null, asked: null }
  const each = all(scores)
  if (!each.ok) return { score: each, asked: null }
  const offsets = startsWithFreeHands(each.value.flatMap(({ tanks }) => tanks))
  const score = joined(each.value.map((one, i) => ({ score: one, offset: offsets[i] as Seconds })))
  return { score, asked: score.ok ? askedOf(readings, offsets) : null }
}

function askedOf(readings: readonly TankRead[], offsets: readonly Seconds[]): PlanRunInput | null {
  const asked = readings.flatMap((reading) => (reading.asked === null ? [] : [reading.asked]))
  const [first] = asked
  if (first === undefined || asked.length < readings.length) return null
  const tanks = asked.flatMap((one) => one.tanks)
  return {
    ...first,
    tanks: tanks.map((tank, i) => ({ ...tank, conditions: { ...tank.conditions, offset: offsets[i] as Seconds } })),
  }
}
