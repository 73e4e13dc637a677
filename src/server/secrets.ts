import { createHash, randomBytes, webcrypto } from 'node:crypto'
import type { Random } from '../kernel/index.js'

export const sha256 = (text: string): string => createHash('sha256').update(text).digest('hex')

/** Chance that cannot be guessed. */
export const trueRandom: Random = { bytes: (count) => webcrypto.getRandomValues(new Uint8Array(count)) }

/** The token in a paired device's cookie. */
export const newToken = (): string => randomBytes(32).toString('base64url')

// Letters and digits that are not mistaken for each other when read aloud or typed.
const ALPHABET = '23456789ABCDEFGHJKMNPQRSTUVWXYZ'

/** A pairing code of ten characters in two groups: some 49 bits, for ten minutes, behind a limit on attempts. */
export function newPairingCode(random: Random = trueRandom): string {
  const letters: string[] = []
  while (letters.length < 10) {
    for (const byte of random.bytes(16)) {
      // Bytes past the last whole multiple of the alphabet are passed over, so that every letter is equally likely.
      if (byte < 248 && letters.length < 10) letters.push(ALPHABET[byte % ALPHABET.length] as string)
    }
  }
  return `${letters.slice(0, 5).join('')}-${letters.slice(5).join('')}`
}

/** A code as typed by a person, brought to the form that was hashed. */
export const tidyCode = (typed: string): string => {
  const letters = typed.toUpperCase().replace(/[^0-9A-Z]/g, '')
  return `${letters.slice(0, 5)}-${letters.slice(5)}`
}
