import { z } from 'zod'
import type { Celsius, Instant, Millilitres, Seconds } from '../../kernel/index.js'
import { Duration, Temperature } from './common.js'

/**
 * Lists of baths, plans and events cross the boundary as the score has them, so that a phone can follow a run by what it
 * was sent and send what it followed by. Their numbers carry the score's types here.
 */
export const DegreesCelsius = Temperature as unknown as z.ZodType<Celsius>
export const InSeconds = Duration as unknown as z.ZodType<Seconds>
export const InMillilitres = z.number().min(1).max(100_000).describe('millilitres') as unknown as z.ZodType<Millilitres>

const LAST_MS = 100_000_000_000_000
/** Whole milliseconds since 1970 by some clock; a clock may be wrong, but not by thousands of years. */
export const InstantMs = z
  .int()
  .min(0)
  .max(LAST_MS)
  .describe('milliseconds since 1970') as unknown as z.ZodType<Instant>
/** Whole milliseconds since a page was loaded. */
export const MonotonicMs = z.int().min(0).max(1_000_000_000_000)
/** Short text that a program makes: ids of steps, devices and page loads. */
export const Token = z
  .string()
  .min(1)
  .max(120)
  .regex(/^[\x21-\x7e]+$/, 'a short name without spaces')
