import type { MixDoubt, MixSource } from './definition.js'

interface Wanted {
  readonly name: string
  readonly amount: number
  readonly unit: 'ml' | 'g'
  readonly from: readonly MixSource[]
}

/** A thousandth, as the ledger counts; less than that is nothing. */
const round = (amount: number): number => Math.round(amount * 1000) / 1000

/** The opened ones first, then what ends first: so that packages are used up one after the other. */
function inTurn(one: MixSource, other: MixSource): number {
  const opened = Number(one.opened === null) - Number(other.opened === null)
  const [ends, otherEnds] = [one.useBy ?? '9999', other.useBy ?? '9999']
  return opened || (ends < otherEnds ? -1 : ends > otherEnds ? 1 : one.held - other.held)
}

/** What is taken from which package, and what is doubtful about it: too little, or past its date. */
export function taken(wanted: Wanted, today: string): { takes: { id: string; amount: number }[]; doubts: MixDoubt[] } {
  const usable = wanted.from.filter(({ held, unit }) => held > 0 && unit === wanted.unit).sort(inTurn)
  const { name, unit } = wanted
  if (usable.length === 0) return { takes: [], doubts: [{ of: 'none-on-hand', stops: true, name }] }
  const held = round(usable.reduce((sum, source) => sum + source.held, 0))
  const amount = round(wanted.amount)
  const takes: { id: string; amount: number }[] = []
  const doubts: MixDoubt[] = held < amount ? [{ of: 'not-enough', stops: true, name, wanted: amount, held, unit }] : []
  let rest = amount
  for (const source of usable) {
    if (rest <= 0) break
    const some = Math.min(rest, source.held)
    takes.push({ id: source.id, amount: round(some) })
    rest = round(rest - some)
    if (source.useBy !== null && source.useBy < today)
      doubts.push({ of: 'past-date', stops: false, name: source.name, useBy: source.useBy })
  }
  return { takes, doubts }
}
