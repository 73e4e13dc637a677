import { SeededRandom } from '../../src/kernel/index.js'

/**
 * Repeatable choices. Each topic of the bench draws from a stream of its own, so that adding a topic (rolls, lots)
 * leaves what the others did as it was.
 */
export class Chance {
  private readonly source: SeededRandom

  constructor(seed: number, topic: number) {
    this.source = new SeededRandom(seed * 1009 + topic)
  }

  /** A number in [low, high). */
  number(low: number, high: number): number {
    return low + this.source.unit() * (high - low)
  }

  /** A whole number from low to high, both included. */
  whole(low: number, high: number): number {
    return Math.floor(this.number(low, high + 1))
  }

  happens(probability: number): boolean {
    return this.source.unit() < probability
  }

  pick<T>(list: readonly T[]): T {
    return list[this.whole(0, list.length - 1)] as T
  }

  shuffled<T>(list: readonly T[]): T[] {
    const keyed = list.map((item) => ({ item, key: this.source.unit() }))
    return keyed.sort((one, other) => one.key - other.key).map(({ item }) => item)
  }
}
