import { problem, type Reading, readNumber } from '../../../kernel/index.js'

/** A bare factor such as `1.10` or `0,9`; an empty text is no factor. */
export function readFactor(text: string, what: string): Reading<number> | null {
  const trimmed = text.trim()
  if (trimmed === '') return null
  const value = readNumber(trimmed)
  return value === undefined
    ? {
        kind: 'refused',
        problem: problem('quantity.unreadable', { text: trimmed.slice(0, 40), what, example: '1.10' }),
      }
    : { kind: 'read', value, echo: `× ${value}` }
}
