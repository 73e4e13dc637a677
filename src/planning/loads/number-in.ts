/**
 * The number of a roll in what was typed or read from a sticker: an address that ends in `/r/2026-0017`, or the number
 * itself. Numbers are made of words, digits and dashes, so that no number holds `/r/`.
 */
export function rollNumberIn(typed: string): string {
  const coded = typed.trim().match(/\/r\/([^/?#\s]+)\/?$/)?.[1]
  if (coded === undefined) return typed.trim()
  try {
    return decodeURIComponent(coded)
  } catch {
    // Half a code is looked for as it is, and found nowhere.
    return coded
  }
}
