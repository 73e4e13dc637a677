import { failed, ok, problem, type Result, type Seconds } from '../../kernel/index.js'
import { refusedOutside } from '../range.js'

const FACTORS = { low: 1, high: 100 } as const

/**
 * Watkins' rule: total time is the time of appearance of the image times a factor of the agent. Historical: it is
 * kept to check the contrast–time law by, since both follow when k and t0 change together with temperature, and is
 * offered nowhere as a way of working. Appearance 0.5 s to 1 h, factor 1 to 100; outside, refused.
 * Source: factors and worked examples in E. J. Wall, Dictionary of Photography, p. 713; Cyclopedia of Photography, 1911.
 */
export const watkinsTime = (appearance: Seconds, factor: number): Result<Seconds> =>
  refusedOutside('contrast.bad-value', 'A time of appearance in seconds', appearance, { low: 0.5, high: 3600 }) ??
  refusedOutside('contrast.bad-value', 'A Watkins factor', factor, FACTORS, 'factor') ??
  ok((appearance * factor) as Seconds)

/** One agent of a mixed developer. */
export interface AgentPart {
  readonly parts: number
  readonly factor: number
}

/**
 * Factor of a mixture: the mean of the agents' factors by parts. One to eight agents, parts above 0 up to 1000,
 * factors 1 to 100; outside, refused. Source: Cyclopedia of Photography, 1911.
 */
export function watkinsFactorOfMixture(agents: readonly AgentPart[]): Result<number> {
  if (agents.length === 0 || agents.length > 8)
    return failed(
      problem('contrast.bad-value', { what: 'The number of agents', value: agents.length, low: 1, high: 8 }),
    )
  for (const { parts, factor } of agents) {
    const refused =
      refusedOutside('contrast.bad-value', 'A part', parts, { low: 0.001, high: 1000 }, 'agents') ??
      refusedOutside('contrast.bad-value', 'A Watkins factor', factor, FACTORS, 'agents')
    if (refused) return refused
  }
  const total = agents.reduce((sum, { parts }) => sum + parts, 0)
  return ok(agents.reduce((sum, { parts, factor }) => sum + parts * factor, 0) / total)
}
