import { failed, type Millilitres, ok, type Problem, type Result, type Seconds } from '../../kernel/index.js'
import { type Fills, leastOf, rollsByVolume } from '../left/index.js'
import { refusedOutside } from '../range.js'
import { capacityOf, FIXING_FAMILY_NAMES, type FilmFixed, type FixingFamily, takenOfCount } from './families.js'
import {
  type FixerKind,
  rollsToSilver,
  type SilverInBath,
  type SilverOfFilm,
  silverAfter,
  silverLimit,
} from './silver.js'
import { type ClearingTest, type ClearingTrend, clearingTrend } from './trend.js'

/** Rolls a litre that an unknown fixer carries: textbook, 3rd ed. 2008, p. 108. */
export const UNKNOWN_CAPACITY = { acid: 20, alkaline: 25, origin: 'practice' } as const

/** A fixer in use, and what is known of it. */
export interface FixerInUse {
  readonly kind: FixerKind
  /** As it was mixed, 50 mL to 100 L. */
  readonly volume: Millilitres
  /** From its label, 1 to 500; {@link UNKNOWN_CAPACITY} where there is none. */
  readonly rollsPerLitre: number
  /** Film since it was fresh. */
  readonly fixed: readonly FilmFixed[]
  /** g/L, where the person's own is below the guide's. */
  readonly silverLimit?: number
  readonly film?: SilverOfFilm
  /** Clearing tests, with the time of the fresh bath. */
  readonly tests?: { readonly fresh: Seconds; readonly made: readonly ClearingTest[] }
  /** The bottle and its tank, where volume may end it. */
  readonly fills?: Fills
}

/** What ends a fixer first: counted rolls, silver, its clearing tests, or what is left of it. */
export type FixerEnd = 'count' | 'silver' | 'tests' | 'volume'

/** What may still be fixed. */
export interface FixerLeft {
  /** Ordinary rolls by each thing that ends a bath, with fractions; null for what is not known. */
  readonly by: Readonly<Record<FixerEnd, number | null>>
  readonly decides: FixerEnd
  /** The least of them. */
  readonly rolls: number
  /** Whole rolls of each family, either or; counted for that family, so another thing may decide. */
  readonly whole: Readonly<Record<FixingFamily, number>>
  /** Ordinary rolls' worth of the count that is used, and the whole count. */
  readonly taken: number
  readonly carries: number
  readonly silver: SilverInBath
  readonly silverLimit: number
  readonly trend: ClearingTrend | null
  /** Why tests say nothing, when they were given and say nothing. */
  readonly noTrend: Problem | null
}

/** 2 rolls must not become 1 by the last digit of 12 − 10. */
const whole = (rolls: number): number => Math.floor(Math.max(0, rolls) + 1e-9)

/**
 * Rolls left in a fixer by its count, by silver, by the trend of clearing tests and by volume; the least decides and is
 * named. 600 mL at 20 a litre after 5 ordinary rolls and 3 tabular ones: 2 ordinary or 1 tabular.
 */
export function fixerLeft(bath: FixerInUse): Result<FixerLeft> {
  const { volume, rollsPerLitre, fixed } = bath
  const refused =
    refusedOutside('fixing.bad-value', 'A volume in millilitres', volume, { low: 50, high: 100_000 }, 'volume') ??
    refusedOutside('fixing.bad-value', 'Rolls a litre', rollsPerLitre, { low: 1, high: 500 }, 'rollsPerLitre')
  if (refused) return refused
  const taken = takenOfCount(fixed)
  if (!taken.ok) return taken
  const met = fixed.reduce((sum, { rolls }) => sum + rolls, 0)
  const silver = bySilver(bath, met)
  if (!silver.ok) return silver
  const tests = byTests(bath, met)
  if (!tests.ok) return tests
  const volumes = bath.fills === undefined ? ok(null) : rollsByVolume(bath.fills)
  if (!volumes.ok) return volumes
  const carries = (rollsPerLitre * volume) / 1000
  const by = {
    count: Math.max(0, carries - taken.value),
    silver: silver.value.left,
    tests: tests.value.left,
    volume: volumes.value,
  }
  // The count and silver are always known.
  const least = leastOf<FixerEnd>(by) as { amount: number; decides: FixerEnd }
  return ok({
    by,
    decides: least.decides,
    rolls: least.amount,
    whole: wholeOf(by),
    taken: taken.value,
    carries,
    silver: silver.value.now,
    silverLimit: silver.value.limit,
    ...tests.value.trend,
  })
}

/** Only the count knows families: silver goes by area, a tank by its volume, and tests speak of the film as it comes. */
function wholeOf(by: FixerLeft['by'] & { readonly count: number }): Record<FixingFamily, number> {
  const of = (family: FixingFamily) => {
    const least = leastOf<FixerEnd>({ ...by, count: by.count * capacityOf({ family }) })
    return whole(least?.amount ?? 0)
  }
  return Object.fromEntries(FIXING_FAMILY_NAMES.map((family) => [family, of(family)])) as Record<FixingFamily, number>
}

interface Silver {
  readonly left: number
  readonly now: SilverInBath
  readonly limit: number
}

function bySilver({ kind, volume, silverLimit: own, film }: FixerInUse, met: number): Result<Silver> {
  const limit = silverLimit(kind, own)
  if (!limit.ok) return limit
  const now = silverAfter(met, volume, film)
  if (!now.ok) return now
  const toLimit = rollsToSilver(limit.value, film?.gramsPerM2, film?.share)
  if (!toLimit.ok) return toLimit
  return ok({ left: Math.max(0, (toLimit.value * volume) / 1000 - met), now: now.value, limit: limit.value })
}

interface Tests {
  readonly left: number | null
  readonly trend: Pick<FixerLeft, 'trend' | 'noTrend'>
}

/** Tests that show no growth yet say nothing about the end, and leave the others to decide; wrong tests are refused. */
function byTests({ tests }: FixerInUse, met: number): Result<Tests> {
  if (tests === undefined) return ok({ left: null, trend: { trend: null, noTrend: null } })
  const trend = clearingTrend(tests.fresh, tests.made)
  if (trend.ok) return ok({ left: Math.max(0, trend.value.endsAt - met), trend: { trend: trend.value, noTrend: null } })
  if (trend.problem.code === 'fixing.bad-value') return failed(trend.problem)
  return ok({ left: null, trend: { trend: null, noTrend: trend.problem } })
}
