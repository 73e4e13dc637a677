import type { Clock } from './clock.js'

/** Where chance comes from: bytes, as `crypto.getRandomValues` gives. */
export interface Random {
  bytes(count: number): Uint8Array
}

/** Makes identifiers; see {@link uuidV7}. */
export interface Ids {
  next(): string
}

/**
 * A repeatable source for tests and the generated bench (mulberry32, one 32-bit state).
 * Not for codes that must not be guessed.
 */
export class SeededRandom implements Random {
  private state: number
  constructor(seed: number) {
    this.state = seed >>> 0
  }
  /** The next number in [0, 1). */
  unit(): number {
    this.state = (this.state + 0x6d2b79f5) >>> 0
    let t = this.state
    t = Math.imul(t ^ (t >>> 15), t | 1)
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61)
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
  bytes(count: number): Uint8Array {
    return Uint8Array.from({ length: count }, () => Math.floor(this.unit() * 256))
  }
}

/** UUID version 7 (RFC 9562): 48 bits of milliseconds, then chance, so ids sort by the moment they were made. */
export function uuidV7(clock: Clock, random: Random): string {
  const bytes = new Uint8Array(16)
  const ms = Math.max(0, Math.floor(clock.now()))
  for (let i = 0; i < 6; i++) bytes[i] = Math.floor(ms / 2 ** (8 * (5 - i))) % 256
  bytes.set(random.bytes(10), 6)
  bytes[6] = 0x70 | ((bytes[6] ?? 0) & 0x0f)
  bytes[8] = 0x80 | ((bytes[8] ?? 0) & 0x3f)
  const hex = Array.from(bytes, (b) => b.toString(16).padStart(2, '0')).join('')
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-${hex.slice(12, 16)}-${hex.slice(16, 20)}-${hex.slice(20)}`
}

export const idsFrom = (clock: Clock, random: Random): Ids => ({ next: () => uuidV7(clock, random) })
