import { failed, ok, problem, type Result } from '../../kernel/index.js'
import { capacityOf, rollsOf } from '../../science/index.js'
import type { MetFilm } from '../../wire/index.js'
import type { Portion } from './port.js'

/** The ledger counts in whole thousandths of a millilitre and of a gram. */
export const toLedger = (amount: number): number => Math.round(amount * 1000)
export const fromLedger = (amount: number): number => amount / 1000
const MILLION = 1_000_000
export const toRolls = (millionths: number): number => millionths / MILLION
export const toMillionths = (rolls: number): number => Math.round(rolls * MILLION)

export const NOTHING: Portion = { held: 0, basis: 0, worked: 0, met: 0 }
const NAMES = ['held', 'basis', 'worked', 'met'] as const

const each = (of: (name: (typeof NAMES)[number]) => number): Portion => ({
  held: of('held'),
  basis: of('basis'),
  worked: of('worked'),
  met: of('met'),
})

export const plus = (one: Portion, other: Portion): Portion => each((name) => one[name] + other[name])
/** None of it is written as 0, never as −0. */
export const minus = (one: Portion): Portion => each((name) => 0 - one[name])

/**
 * So much out of a container, with its share of everything that goes along; the share is rounded down and the rest
 * stays, so that nothing comes or goes. All of it takes the last millionth too.
 */
export function shareOf(whole: Portion, amount: number): Portion {
  if (amount >= whole.held) return each((name) => whole[name])
  // Products of two whole numbers pass 2^53 here, so the share is counted in whole numbers of any size.
  const part = (value: number) => Number((BigInt(value) * BigInt(amount)) / BigInt(whole.held))
  return each((name) => (name === 'held' ? amount : part(whole[name])))
}

/** What film takes of a bath: rolls met, and ordinary rolls of its count, with the family's own part where one is said. */
export function filmTakes(
  film: readonly MetFilm[],
  familyCapacity: number | null,
): Result<{ met: number; worked: number }> {
  let [met, worked] = [0, 0]
  for (const { format, frames, count, family } of film) {
    const counted = rollsOf([{ format, count, ...(frames === null ? {} : { frames }) }])
    if (!counted.ok) return counted
    const capacity = family !== 'ordinary' && familyCapacity !== null ? { capacity: familyCapacity } : {}
    met += counted.value.exact
    worked += counted.value.exact / capacityOf({ family, ...capacity })
  }
  if (met > 10_000) return failed(problem('shelf.too-much-film', { rolls: Math.round(met) }, 'film'))
  return ok({ met: toMillionths(met), worked: toMillionths(worked) })
}
