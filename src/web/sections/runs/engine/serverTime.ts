import { health } from '../../../shared/api/index.js'
import type { DeviceClock } from '../../../shared/platform/index.js'

const ASKED = 3
const PATIENCE_MS = 3000

/**
 * Server's clock minus the monotonic clock of this page, ms: of a few answers the one that was quickest, taken to
 * have been given half way. Null when the server does not answer in time.
 */
export async function askServerTime(clock: DeviceClock): Promise<number | null> {
  const answers: { took: number; offset: number }[] = []
  for (let i = 0; i < ASKED; i++) {
    const before = clock.monotonic()
    const answer = await Promise.race([health().catch(() => null), late()])
    const after = clock.monotonic()
    if (answer === null) break
    answers.push({ took: after - before, offset: Date.parse(answer.now) - (before + after) / 2 })
  }
  return answers.sort((a, b) => a.took - b.took)[0]?.offset ?? null
}

const late = (): Promise<null> => new Promise((resolve) => setTimeout(() => resolve(null), PATIENCE_MS))
