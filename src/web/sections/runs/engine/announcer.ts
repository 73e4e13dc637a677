import type { Instant } from '../../../../kernel/index.js'
import type { Voice } from '../../../shared/platform/index.js'
import type { Cue } from './cues.js'

/** Words that are later than this are not said any more, ms. */
const STALE_MS = 1500
/** What is so near is said even when the plan has just moved it away. */
const NEAR_MS = 1000

/** Says the words of each cue once, at its second. Looks again at each `hear`, several times a second. */
export class Announcer {
  #coming = new Map<string, Cue>()

  constructor(readonly voice: Voice) {}

  hear(cues: readonly Cue[], now: Instant): void {
    for (const [id, cue] of this.#coming) {
      if (cue.at > now) continue
      this.#coming.delete(id)
      if (now - cue.at < STALE_MS && cue.words !== null) this.voice.say(cue.words)
    }
    const still = cues.filter(({ at, words }) => at > now && words !== null)
    const near = [...this.#coming.values()].filter(({ at }) => at - now < NEAR_MS)
    this.#coming = new Map([...near, ...still].map((cue) => [cue.id, cue]))
  }
}
