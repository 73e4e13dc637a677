import { failed, ok, problem, type Result } from '../../kernel/index.js'
import { refusedOutside } from '../range.js'
import { misfitOf, nearestLaw } from './chi.js'
import type { ContrastLaw, ContrastPoint, FittedContrast } from './definition.js'
import { grown } from './law.js'
import { CONTRAST_LIMITS as LIMITS } from './limits.js'
import { lawFromTwoStrips, notALaw } from './two-strips.js'

/**
 * The contrast–time law of a film in a developer from strips developed for different times. Two strips, the second
 * twice as long, in closed form; two at other times with the image beginning at once; three or more by least
 * squares, each strip counted by its reading error and the scatter from strip to strip.
 *
 * 2 to 24 points, times 1 s to 6 h, contrasts 0.02 to 6. `scatter`: one's own standard deviation from strip to
 * strip, else 0.02. Refused when the times are alike, contrast does not grow, or no law fits. Some 1 ms.
 */
export function fitContrast(points: readonly ContrastPoint[], scatter?: number): Result<FittedContrast> {
  const used = scatter ?? LIMITS.scatter
  const refused =
    refusedOutside('contrast.bad-value', 'A strip scatter', used, LIMITS.scatters, 'scatter') ?? badPoint(points)
  if (refused) return refused
  const sorted = [...points].sort((one, other) => one.time - other.time)
  const times = distinctTimes(sorted)
  const details = { count: times, fewest: LIMITS.points.fewest }
  if (times < LIMITS.points.fewest) return failed(problem('contrast.too-few-strips', details, 'points'))
  const stated = { value: used, origin: scatter === undefined ? 'assumption' : 'measured' } as const
  const [first, second] = [sorted[0] as ContrastPoint, sorted.at(-1) as ContrastPoint]
  if (sorted.length === 2 && second.time === 2 * first.time) {
    const law = lawFromTwoStrips(first.time, first.contrast, second.contrast)
    return law.ok ? ok({ ...described(law.value, points, 'two-strips'), scatter: stated }) : law
  }
  if (times === 2 && !(first.contrast < second.contrast && isSlowing(first, second)))
    return notALaw(first.time, first.contrast, second.contrast, second.time)
  const { law, fit } = nearestLaw(sorted, misfitOf(sorted, used), times > 2)
  const reason = complaintAbout(law, sorted, fit.stopped)
  if (reason !== null) return failed(problem('contrast.no-fit', { count: points.length, reason }, 'points'))
  return ok({ ...described(law, points, times > 2 ? 'least-squares' : 'assumed-start'), scatter: stated })
}

function badPoint(points: readonly ContrastPoint[]) {
  const few = refusedOutside('contrast.bad-value', 'The number of strips', points.length, {
    low: 1,
    high: LIMITS.points.most,
  })
  if (few) return few
  for (const [i, { time, contrast, standardError = 0 }] of points.entries()) {
    const field = `points[${i}]`
    const refused =
      refusedOutside('contrast.bad-value', 'A time in seconds', time, LIMITS.time, field) ??
      refusedOutside('contrast.bad-value', 'A contrast', contrast, LIMITS.contrast, field) ??
      refusedOutside('contrast.bad-value', 'A standard error', standardError, LIMITS.standardError, field)
    if (refused) return refused
  }
  return null
}

const distinctTimes = (sorted: readonly ContrastPoint[]): number =>
  sorted.filter(({ time }, i) => i === 0 || time > (sorted[i - 1] as ContrastPoint).time * (1 + LIMITS.closest)).length

/** Contrast per time falls, as it must when growth slows down from the first moment. */
const isSlowing = (first: ContrastPoint, second: ContrastPoint): boolean =>
  second.contrast / second.time < first.contrast / first.time

function complaintAbout(law: ContrastLaw, points: readonly ContrastPoint[], stopped: string): string | null {
  if (stopped !== 'converged') return `the search ended by ${stopped}`
  const greatest = Math.max(...points.map(({ contrast }) => contrast))
  if (!(law.most <= LIMITS.mostOverStrips * greatest)) return 'their contrast does not slow down with time'
  if (!(law.rate * (points.at(-1) as ContrastPoint).time < 200)) return 'their contrast does not grow with time'
  return null
}

function described(law: ContrastLaw, points: readonly ContrastPoint[], method: FittedContrast['method']) {
  return {
    law,
    points,
    method,
    startOrigin: method === 'least-squares' ? ('measured' as const) : ('assumption' as const),
    misfits: points.map(({ time, contrast }) => grown(law, time) - contrast),
  }
}
