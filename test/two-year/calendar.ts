import type { Instant } from '../../src/kernel/index.js'

const MINUTE = 60_000
const DAY = 24 * 60 * MINUTE

/** The first moment of the two years, and the first after them. */
export const START: Instant = Date.UTC(2024, 9, 1)
export const END: Instant = Date.UTC(2026, 9, 1)

/** How many evenings there are; the last has the number one less. */
export const DAYS = (END - START) / DAY

/** Six terms, by the day on which each begins: October, February and June, twice. */
export const TERMS = [0, 123, 243, 365, 488, 608] as const

/** An evening of the darkroom: day 0 is 1 October 2024; doors open at six. */
export const evening = (day: number, minutesIn = 0): Instant => START + day * DAY + (18 * 60 + minutesIn) * MINUTE

/** Years gone by since the first day. */
export const yearsSinceStart = (at: Instant): number => (at - START) / (365.25 * DAY)
