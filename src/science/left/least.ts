/** How much a lot can still do by one thing that ends it: rolls, or days; null where that is not known. */
export type LeftBy<Name extends string> = Readonly<Record<Name, number | null>>

/** The least of what is left, and what decides it. */
export interface Least<Name extends string> {
  readonly amount: number
  readonly decides: Name
}

/**
 * The least decides and is named: of `{ count: 9.2, silver: 4.9, tests: null }` silver, with 4.9. Of two alike the first
 * named one. Null when nothing is known at all. Amounts below zero are none left, hence 0.
 */
export function leastOf<Name extends string>(left: LeftBy<Name>): Least<Name> | null {
  let least: Least<Name> | null = null
  for (const [name, amount] of Object.entries(left) as [Name, number | null][]) {
    if (amount === null) continue
    const held = Math.max(0, amount)
    if (least === null || held < least.amount) least = { amount: held, decides: name }
  }
  return least
}
