import { failed, grams, ok, problem, type Result } from '../../kernel/index.js'
import { type Addition, type BathFormula, wrongAmounts } from './recipe.js'
import { PUBLISHED_SWAPS, type Salt } from './salts.js'
import { type Substitution, saltNamed, substitute } from './substitution.js'
import { mixingWaterFor } from './water.js'

/** A chemical that is at hand; `instead` is the salt of the formula that it stands for, where that is not plain. */
export interface AtHand {
  readonly salt: string
  readonly instead?: string
}

/** A salt of a formula that gave way to what was at hand; amounts are grams a litre. */
export interface Swap {
  /** Ids in the table of salts. */
  readonly wanted: string
  readonly have: string
  readonly wantedPerLitre: number
  readonly substitution: Substitution
}

/** A formula as it is mixed from what is at hand, and what gave way. */
export interface FromAtHand {
  readonly formula: BathFormula
  readonly swaps: readonly Swap[]
}

/**
 * A formula with what is at hand in place of what it calls for, each at the place of the salt it stands for. A hydrate
 * stands for its own salt; another salt only by a published swap, whose companion comes in right after it. What stands
 * for nothing here is refused, and so is a different salt without a published swap. Liquids are not swapped.
 */
export function withAtHand(formula: BathFormula, atHand: readonly AtHand[]): Result<FromAtHand> {
  for (const addition of formula.additions) {
    const wrong = wrongAmounts(addition)
    if (wrong) return wrong
  }
  let mixed = formula
  const swaps: Swap[] = []
  for (const one of atHand) {
    const swap = swapFor(mixed, one)
    if (!swap.ok) return swap
    if (swap.value.substitution.kind === 'same-salt') continue
    swaps.push(swap.value)
    const additions = swapped(mixed.additions, swap.value)
    if (!additions.ok) return additions
    mixed = { ...mixed, additions: additions.value }
  }
  return ok({ formula: { ...mixed, temperature: waterAfter(formula, mixed) }, swaps })
}

function swapFor({ additions }: BathFormula, { salt, instead }: AtHand): Result<Swap> {
  const have = saltNamed(salt)
  if (!have.ok) return have
  const named = instead === undefined ? null : saltNamed(instead)
  if (named?.ok === false) return named
  const dry = additions.filter(({ gramsPerLitre }) => gramsPerLitre !== undefined)
  const wanted = named === null ? wantedBy(have.value, dry) : dry.find((addition) => addition.salt === named.value.id)
  if (wanted === undefined)
    return failed(
      problem(
        'formula.nothing-to-replace',
        { have: have.value.name, calls: dry.map((addition) => addition.salt).join(', ') || 'nothing' },
        'at_hand',
      ),
    )
  const perLitre = wanted.gramsPerLitre as number
  const substitution = substitute(wanted.salt, have.value.id, grams(perLitre))
  return substitution.ok
    ? ok({
        wanted: wanted.salt,
        have: have.value.id,
        wantedPerLitre: perLitre,
        substitution: substitution.value,
      })
    : substitution
}

/** The addition of the same family, else one that a published swap knows. */
const wantedBy = (have: Salt, dry: readonly Addition[]): Addition | undefined =>
  dry.find(({ salt }) => familyOf(salt) === have.family) ??
  dry.find(({ salt }) => PUBLISHED_SWAPS.some((swap) => swap.wanted === salt && swap.have === have.id))

const familyOf = (salt: string): string | null => {
  const found = saltNamed(salt)
  return found.ok ? found.value.family : null
}

function swapped(additions: readonly Addition[], { wanted, have, substitution }: Swap): Result<Addition[]> {
  const instead: Addition = { salt: have, gramsPerLitre: substitution.amount }
  const { companion } = substitution
  if (companion === null) return ok(additions.map((one) => (one.salt === wanted ? instead : one)))
  const partner = saltNamed(companion.salt)
  if (!partner.ok) return partner
  const { id } = partner.value
  // What of the companion the formula holds already is there for its own sake, and stays beside it.
  const before = additions.find(({ salt }) => salt === id)?.gramsPerLitre ?? 0
  const beside: Addition = { salt: id, gramsPerLitre: before + companion.amount }
  return ok(
    additions.filter(({ salt }) => salt !== id).flatMap((one) => (one.salt === wanted ? [instead, beside] : [one])),
  )
}

/** Crystals of hypo cool the water that they are dissolved in; without them a fixer is begun cooler. */
const waterAfter = ({ role, additions, temperature }: BathFormula, after: BathFormula): BathFormula['temperature'] =>
  temperature === mixingWaterFor(role, additions) ? mixingWaterFor(role, after.additions) : temperature
