import { DAY_MS, type Instant, millilitres, seconds } from '../../kernel/index.js'
import {
  ageOf,
  type FixerLeft,
  type FixingFamily,
  fixerLeft,
  KEEPING,
  type KeepingKind,
  type KeepingTimes,
  rollsByVolume,
  STOP_ACIDS,
  type Stretch,
  stopCapacity,
  stopMolarity,
  UNKNOWN_CAPACITY,
} from '../../science/index.js'
import type { LeftView, ProductStatement } from '../../wire/index.js'
import { fromLedger, toRolls } from './amounts.js'
import type { Contents, TestRead } from './ledger.js'

export type Limit = Omit<LeftView['limits'][number], 'ends'>
type Origin = Limit['origin']

/** A bath in a container: what the ledger and its product say of it. */
export interface Bath {
  readonly contents: Contents
  readonly product: ProductStatement
  /** How it was diluted; null for stock and for what is not thinned. */
  readonly parts: readonly number[] | null
  /** The clearing time of a fresh bath of this product, by family; null where none was tested. */
  readonly fresh: Readonly<Record<FixingFamily, number | null>>
}

/** Where a product's own figure is from, in the words of the sciences. */
const originOf = ({ origin }: ProductStatement): Origin =>
  ({
    label: 'sheet',
    sheet: 'sheet',
    own: 'measured',
    practice: 'practice',
    memory: 'assumption',
    assumption: 'assumption',
  })[origin] as Origin
const sourceOf = (product: ProductStatement): string => product.source || 'what is kept of the product'

const inRolls = (by: Limit['by'], rolls: number, whole: number, from: Pick<Limit, 'origin' | 'source'>): Limit => {
  const held = Math.max(0, rolls)
  return { by, rolls: held, days: null, part: whole > 0 ? Math.min(1, held / whole) : 0, ...from }
}

/** Rolls a litre: by the label, else what common practice gives an unknown fixer; other baths have no such default. */
export function rollsPerLitre(
  product: ProductStatement,
): (Pick<Limit, 'origin' | 'source'> & { value: number }) | null {
  if (product.rolls_per_litre !== null)
    return { value: product.rolls_per_litre, origin: originOf(product), source: sourceOf(product) }
  if (product.fixer === null) return null
  const value = product.fixer.alkaline ? UNKNOWN_CAPACITY.alkaline : UNKNOWN_CAPACITY.acid
  return { value, origin: UNKNOWN_CAPACITY.origin, source: 'an unknown fixer; textbook, 3rd ed. 2008, p. 108' }
}

/** The count a container may come to, in millionths of a roll; null where nothing is counted. */
export function carriesOf(product: ProductStatement, basis: number): number | null {
  if (product.use === 'single-use') return null
  const capacity = rollsPerLitre(product)
  return capacity === null ? null : Math.floor(capacity.value * basis + 1e-6)
}

/** The last clearing test, or null. */
export const lastClearing = (tests: readonly TestRead[]) =>
  tests.flatMap(({ test, met }) => (test.of === 'clearing' ? [{ ...test, met }] : [])).at(-1) ?? null

/** Every limit that is known of a bath. */
export function limitsOf(bath: Bath, now: Instant): { limits: Limit[]; fixer: FixerLeft | null } {
  const fixer = ofFixer(bath)
  const limits = [...fixer.limits, ...ofCount(bath), ...ofAcid(bath), ...ofVolume(bath), ...ofAge(bath, now)]
  return { limits, fixer: fixer.left }
}

function ofFixer({ contents, product, fresh }: Bath): { limits: Limit[]; left: FixerLeft | null } {
  const capacity = rollsPerLitre(product)
  if (product.fixer === null || capacity === null) return { limits: [], left: null }
  const { met, worked, basis } = contents
  const family = lastClearing(contents.tests)?.family ?? 'ordinary'
  const baseline = fresh[family]
  const made = contents.tests.flatMap(({ test, met: at }) =>
    test.of === 'clearing' && test.family === family ? { rolls: at, clearing: seconds(test.clears_s) } : [],
  )
  const left = fixerLeft({
    kind: product.fixer.salt,
    volume: millilitres(fromLedger(basis)),
    rollsPerLitre: capacity.value,
    // One film that stands for all of it: as many rolls, and as much of the count.
    fixed: met > 0 ? [{ rolls: toRolls(met), family: 'ordinary', capacity: met / worked }] : [],
    ...(product.silver_limit_g_per_l === null ? {} : { silverLimit: product.silver_limit_g_per_l }),
    ...(baseline === null || made.length === 0 ? {} : { tests: { fresh: seconds(baseline), made } }),
  })
  if (!left.ok) return { limits: [], left: null }
  const { by, carries, trend } = left.value
  const limits = [inRolls('count', by.count ?? 0, carries, capacity)]
  const silver = by.silver ?? 0
  const assumed = { origin: 'assumption', source: 'silver of film from memory, against a compliance guide' } as const
  limits.push(inRolls('silver', silver, silver + toRolls(met), assumed))
  if (by.tests !== null)
    limits.push(inRolls('tests', by.tests, trend?.endsAt ?? 0, { origin: 'measured', source: 'own clearing tests' }))
  return { limits, left: left.value }
}

/** Counted baths that are no fixers. */
function ofCount({ contents, product }: Bath): Limit[] {
  const capacity = product.fixer === null && product.use !== 'single-use' ? rollsPerLitre(product) : null
  if (capacity === null) return []
  const carries = capacity.value * fromLedger(contents.basis) * 0.001
  return [inRolls('count', carries - toRolls(contents.worked), carries, capacity)]
}

function ofAcid({ contents, product }: Bath): Limit[] {
  if (product.stop === null || product.use === 'single-use') return []
  const { acid, percent } = product.stop
  if (!(acid in STOP_ACIDS)) return []
  const molarity = stopMolarity(percent, acid)
  if (!molarity.ok) return []
  const volume = millilitres(fromLedger(contents.basis))
  const capacity = stopCapacity({ volume, molarity: molarity.value, acid })
  if (!capacity.ok) return []
  const source = 'alkali carried in, 20 mL of 0.25 mol/L a roll, against the acid left'
  const left = capacity.value.byAcid - toRolls(contents.met)
  return [inRolls('acid', left, capacity.value.byAcid, { origin: 'assumption', source })]
}

/** Fills as the last one was, or by the floor of a stock where nothing was poured yet. */
function ofVolume({ contents, product, parts }: Bath): Limit[] {
  const inBottle = millilitres(fromLedger(contents.held))
  const last = contents.uses.findLast(({ rolls, lostMl }) => rolls >= 1 && lostMl >= 0.1)
  const filled = (rolls: number) => rolls + contents.uses.reduce((sum, use) => sum + use.rolls, 0)
  if (last !== undefined) {
    const fill = millilitres(last.pouredMl)
    const lost = millilitres(Math.min(last.lostMl, last.pouredMl))
    const rolls = rollsByVolume({ inBottle, fill, rollsPerFill: Math.floor(last.rolls), lost })
    if (!rolls.ok) return []
    return [
      inRolls('volume', rolls.value, filled(rolls.value), { origin: 'measured', source: 'filled as the last time' }),
    ]
  }
  if (product.floor_ml_per_roll === null || parts !== null) return []
  const rolls = Math.floor(inBottle / product.floor_ml_per_roll + 1e-9)
  return [inRolls('volume', rolls, filled(rolls), { origin: originOf(product), source: sourceOf(product) })]
}

function keepingKind({ product, parts }: Bath): KeepingKind | null {
  if (product.role === 'developer') return parts === null ? 'stock-developer' : 'working-developer'
  return product.role === 'stop' || product.role === 'fixer' ? product.role : null
}

/** Days that it keeps: the product's own, else common practice for its kind. */
function keepingOf(bath: Bath): { lives: KeepingTimes; own: boolean } {
  const { full, half_full, tray, tank } = bath.product.keeps
  const kind = keepingKind(bath)
  const usual = kind === null ? null : KEEPING[kind].days
  return {
    lives: {
      full: full ?? usual?.full ?? null,
      'half-full': half_full ?? usual?.['half-full'] ?? null,
      tray: tray ?? usual?.tray ?? null,
      tank: tank ?? usual?.tank ?? null,
    },
    own: [full, half_full, tray, tank].some((days) => days !== null),
  }
}

/** Age by fractions over the states it stood in; nothing where a state has no known life. */
function ofAge(bath: Bath, now: Instant): Limit[] {
  const { lives, own } = keepingOf(bath)
  const stretches = bath.contents.stretches.map(
    ({ state, from, to }): Stretch => ({ state, days: Math.max(0, (to ?? now) - from) / DAY_MS }),
  )
  const age = ageOf(stretches, lives)
  if (!age.ok) return []
  const from = own
    ? { origin: originOf(bath.product), source: sourceOf(bath.product) }
    : { origin: 'practice' as const, source: 'keeping times by common practice' }
  return [{ by: 'age', rolls: null, days: age.value.daysLeft, part: Math.max(0, 1 - age.value.used), ...from }]
}
