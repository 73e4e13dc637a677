import { failed, type Grams, grams, ok, problem, type Result } from '../../kernel/index.js'
import { refusedOutside } from '../range.js'
import { molarMass } from './parse.js'
import { PUBLISHED_SWAPS, SALTS, type Salt } from './salts.js'

/** What goes in place of what a formula calls for. */
export interface Substitution {
  readonly amount: Grams
  /** g of what is at hand for 1 g of what is called for. */
  readonly factor: number
  readonly kind: 'same-salt' | 'hydrate' | 'published'
  /** What has to go with it; null where nothing has to. */
  readonly companion: { readonly salt: string; readonly amount: Grams; readonly why: string } | null
  readonly source: string
}

/** A salt by its id or its name, capitals aside. */
export function saltNamed(name: string): Result<Salt> {
  const wanted = name.trim().toLowerCase()
  const found = SALTS.find((salt) => salt.id === wanted || salt.name.toLowerCase() === wanted)
  return found
    ? ok(found)
    : failed(problem('formula.salt-unknown', { name: name.slice(0, 60), known: SALTS.map(({ id }) => id).join(', ') }))
}

/** Mass for mass by moles: the molar mass of what is at hand over that of what is called for. */
export function hydrateFactor(wanted: string, have: string): Result<number> {
  const [called, hand] = [molarMass(wanted), molarMass(have)]
  if (!called.ok) return called
  return hand.ok ? ok(hand.value / called.value) : hand
}

/**
 * What is at hand in place of what is called for. Hydrates of one salt swap freely; another salt only by a published
 * swap, with its companion. Amounts up to 10 kg.
 */
export function substitute(wanted: string, have: string, amount: Grams): Result<Substitution> {
  const refused = refusedOutside('formula.bad-value', 'An amount in grams', amount, { low: 0, high: 10_000 }, 'amount')
  if (refused) return refused
  const called = saltNamed(wanted)
  if (!called.ok) return called
  const hand = saltNamed(have)
  if (!hand.ok) return hand
  const byMoles = hydrateFactor(called.value.formula, hand.value.formula)
  if (!byMoles.ok) return byMoles
  if (called.value.family === hand.value.family) {
    const kind = called.value.id === hand.value.id ? 'same-salt' : 'hydrate'
    return ok({
      amount: grams(amount * byMoles.value),
      factor: byMoles.value,
      kind,
      companion: null,
      source: 'molar masses',
    })
  }
  return published(called.value, hand.value, amount, byMoles.value)
}

function published(called: Salt, hand: Salt, amount: Grams, byMoles: number): Result<Substitution> {
  const swap = PUBLISHED_SWAPS.find(({ wanted, have }) => wanted === called.id && have === hand.id)
  if (swap === undefined)
    return failed(
      problem('formula.not-the-same-salt', {
        wanted: called.name,
        have: hand.name,
        way: 'no published swap for the pair is known here; get what the formula calls for, or use a formula written for what you have',
      }),
    )
  const factor = swap.factor === 'by molar mass' ? byMoles : swap.factor
  const companion = swap.companion && companionOf(called, amount, swap.companion)
  return ok({ amount: grams(amount * factor), factor, kind: 'published', companion, source: swap.source })
}

function companionOf(
  called: Salt,
  amount: Grams,
  { salt, molesEach, why }: { salt: string; molesEach: number; why: string },
) {
  const partner = SALTS.find(({ id }) => id === salt) as Salt
  const each = hydrateFactor(called.formula, partner.formula)
  if (!each.ok) throw new Error(`The table of salts has an unreadable formula: ${each.problem.sentence}`)
  return { salt: partner.name, amount: grams(amount * each.value * molesEach), why }
}
