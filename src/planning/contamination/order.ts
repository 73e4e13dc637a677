/** What stands in bottles, as far as it matters what a graduate or a thermometer was in before. */
export const BENCH_ROLES = [
  'developer',
  'stop',
  'fixer',
  'wash-aid',
  'wetting-agent',
  'toner',
  'bleach',
  'cleaner',
  'other',
] as const
export type BenchRole = (typeof BENCH_ROLES)[number]

/**
 * What is done with a shared graduate or thermometer between one bath and the next: nothing, a rinse, three rinses with
 * the outside, or a vessel of its own, because no rinse is trusted with it.
 */
export type Between = 'goes-on' | 'rinse' | 'rinse-well' | 'own-vessel'

/** Why; its sentence is in the catalogue. */
export type BetweenReason =
  | 'same-bath'
  | 'as-the-film-goes'
  | 'another-of-its-kind'
  | 'fixer-in-developer'
  | 'fixer-in-stop'
  | 'fixer-after-washing'
  | 'acid-in-developer'
  | 'developer-in-fixer'
  | 'backwards'
  | 'foam'
  | 'dries-on-film'
  | 'poison-gas'
  | 'oxidiser'
  | 'not-known'

export interface BetweenRule {
  readonly do: Between
  readonly because: BetweenReason
  /** Nobody publishes a table of rinses: it is what darkrooms do. */
  readonly origin: 'practice'
}

const rule = (what: Between, because: BetweenReason): BetweenRule => ({ do: what, because, origin: 'practice' })

/** Baths that make poison with another, or spoil it beyond a rinse. */
const ALONE: Partial<Record<BenchRole, BetweenReason>> = {
  cleaner: 'poison-gas',
  toner: 'poison-gas',
  bleach: 'oxidiser',
}

/** Film goes this way itself, and carries more along than a shaken-out graduate does. */
const ALONG: readonly BenchRole[] = ['developer', 'stop', 'fixer', 'wash-aid']

const SPECIAL: Partial<Record<`${BenchRole}>${BenchRole}`, BetweenRule>> = {
  'fixer>developer': rule('rinse-well', 'fixer-in-developer'),
  'wash-aid>developer': rule('rinse-well', 'fixer-in-developer'),
  'stop>developer': rule('rinse-well', 'acid-in-developer'),
  'fixer>stop': rule('rinse', 'fixer-in-stop'),
  'developer>fixer': rule('rinse', 'developer-in-fixer'),
  'developer>wash-aid': rule('rinse', 'developer-in-fixer'),
  'fixer>wash-aid': rule('goes-on', 'as-the-film-goes'),
  'wetting-agent>developer': rule('rinse-well', 'foam'),
}

/**
 * What comes between one bath and the next in a shared graduate or on a thermometer. `same` where both are of one lot:
 * nothing is carried then. Example: fixer, then developer: rinse well, since traces of fixer fog film in the developer.
 */
export function between(before: BenchRole, next: BenchRole, same = false): BetweenRule {
  if (same) return rule('goes-on', 'same-bath')
  const alone = ALONE[before] ?? ALONE[next]
  if (alone !== undefined && before !== next) return rule('own-vessel', alone)
  const special = SPECIAL[`${before}>${next}`]
  if (special !== undefined) return special
  if (before === 'other' || next === 'other') return rule('rinse-well', 'not-known')
  if (before === next) return rule('rinse', 'another-of-its-kind')
  if (next === 'wetting-agent') return rule('rinse-well', before === 'fixer' ? 'fixer-after-washing' : 'dries-on-film')
  if (before === 'wetting-agent') return rule('rinse', 'foam')
  const [from, to] = [ALONG.indexOf(before), ALONG.indexOf(next)]
  return from < to ? rule('goes-on', 'as-the-film-goes') : rule('rinse', 'backwards')
}

/** What never meets, in a jug, a graduate or a sink, and what comes of it. */
const APART: readonly (readonly [BenchRole, readonly BenchRole[], string])[] = [
  ['cleaner', ['stop', 'fixer', 'developer', 'wash-aid', 'toner', 'bleach'], 'chlorine and other poisonous gas'],
  ['bleach', ['stop', 'fixer', 'developer', 'wash-aid', 'toner'], 'gas and heat'],
  ['toner', ['stop', 'fixer'], 'hydrogen sulfide'],
]

/** Null, or what two baths make of each other that must never meet. */
export function makesTogether(one: BenchRole, other: BenchRole): string | null {
  for (const [role, others, makes] of APART)
    if ((one === role && others.includes(other)) || (other === role && others.includes(one))) return makes
  return null
}
