import type { Celsius, CelsiusDegrees } from '../../kernel/index.js'

/**
 * How far baths may lie apart, °C. Said from 2 °F, the limit of US Army SS0520-5; refused from 5 °F, above which
 * SS0509-8 fears wrinkled gelatin. (A later measurement found none below 73 °C; the old limits cost little.)
 */
export const SPREAD = { said: 1.1, refused: 2.8 } as const

/** Of temperatures that went through °F. */
const SLACK = 1e-6

/** One bath of a list in its order. */
export interface SpreadBath {
  readonly temperature: Celsius
  readonly develops: boolean
  /** A window of its own, such as a colour bleach has; it is then judged by that alone. */
  readonly window: { readonly from: Celsius; readonly to: Celsius } | null
}

/** Places are those of the list that was given, from 0. */
export interface SpreadPair {
  readonly bath: number
  /** The developer or the bath before, whichever lies farther off. */
  readonly other: number
  readonly by: CelsiusDegrees
  readonly verdict: 'said' | 'refused'
}

/** What the temperatures of a list come to: what to say, and whether to refuse. */
export interface SpreadVerdict {
  /** Baths outside their own window. */
  readonly outside: readonly number[]
  readonly pairs: readonly SpreadPair[]
  /** The two baths farthest apart when no pair is refused but all small drops together are too much. */
  readonly chain: { readonly first: number; readonly last: number; readonly by: CelsiusDegrees } | null
  readonly refused: boolean
}

/**
 * How the temperatures of a list's baths lie to each other: each against the developer and the bath before it (said
 * from 1.1 °C, refused from 2.8 °C), and the whole chain (refused from 2.8 °C). A bath with a window is judged by it
 * alone. Whether a refusal may be overridden is the caller's to say.
 */
export function judgeTemperatures(baths: readonly SpreadBath[]): SpreadVerdict {
  const placed = baths.map((bath, place) => ({ ...bath, place }))
  const outside = placed.filter(outsideWindow).map(({ place }) => place)
  const judged = placed.filter(({ window }) => window === null)
  const pairs = pairsApart(judged)
  const tooFar = pairs.some(({ verdict }) => verdict === 'refused')
  const chain = tooFar ? null : chainTooLong(judged)
  return { outside, pairs, chain, refused: tooFar || chain !== null }
}

type Placed = SpreadBath & { readonly place: number }

const outsideWindow = ({ window, temperature }: Placed): boolean =>
  window !== null && !(temperature >= window.from - SLACK && temperature <= window.to + SLACK)

function pairsApart(baths: readonly Placed[]): SpreadPair[] {
  const developer = baths.find(({ develops }) => develops)
  return baths.flatMap((one, i) => {
    const others = [developer, baths[i - 1]].filter((other) => other !== undefined && other !== one) as Placed[]
    const apart = others.map((other) => ({ other, by: Math.abs(one.temperature - other.temperature) }))
    const worst = apart.sort((a, b) => b.by - a.by)[0]
    if (worst === undefined || worst.by < SPREAD.said - SLACK) return []
    const verdict = worst.by < SPREAD.refused - SLACK ? 'said' : 'refused'
    return [{ bath: one.place, other: worst.other.place, by: worst.by as CelsiusDegrees, verdict }]
  })
}

function chainTooLong(baths: readonly Placed[]): SpreadVerdict['chain'] {
  const pairs = baths.flatMap((last, i) => baths.slice(0, i).map((first) => ({ first, last })))
  const by = ({ first, last }: (typeof pairs)[number]) => Math.abs(first.temperature - last.temperature)
  const worst = pairs.sort((a, b) => by(b) - by(a))[0]
  if (worst === undefined || by(worst) < SPREAD.refused - SLACK) return null
  return { first: worst.first.place, last: worst.last.place, by: by(worst) as CelsiusDegrees }
}
