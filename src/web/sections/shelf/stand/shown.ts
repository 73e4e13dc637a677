import { writeRatio } from '../../../../kernel/index.js'
import type { OnShelf } from '../../../shared/api/index.js'

/** `Ammonium fixer 1 + 4`: what is in a bottle. */
export const contentsOf = ({ lot, product }: Pick<OnShelf, 'lot' | 'product'>): string =>
  lot?.parts ? `${product} ${writeRatio({ parts: lot.parts })}` : product

/** How full a bottle is, in three words. */
export function fullness({ statement, held }: OnShelf): 'full' | 'half' | 'rest' {
  if (statement.kind !== 'bottle') return 'half'
  const part = held / statement.holds_ml
  return part >= 0.9 ? 'full' : part >= 0.25 ? 'half' : 'rest'
}

export const ORDERS = ['name', 'end'] as const
export type Order = (typeof ORDERS)[number]

/** Bottles whose words are all found in what is shown of them, by name or by what ends first. */
export function found(bottles: readonly OnShelf[], words: string, order: Order): OnShelf[] {
  const wanted = words.toLowerCase().split(/\s+/).filter(Boolean)
  const kept = bottles.filter((one) => {
    const text = [contentsOf(one), one.lot?.code, one.statement.name, one.statement.note].join(' ').toLowerCase()
    return wanted.every((word) => text.includes(word))
  })
  if (order === 'name') return kept
  const end = ({ left }: OnShelf) =>
    left?.state === 'finished' ? 0 : left?.ends ? Date.parse(left.ends) : Number.MAX_SAFE_INTEGER
  return kept.sort((one, other) => end(one) - end(other))
}

/** The code of a lot where that was typed, alone or as the end of the address on a label. */
export const codeIn = (text: string): string | null => /(?:^|\/l\/)(\d{2}-\d{3,6})$/.exec(text.trim())?.[1] ?? null
