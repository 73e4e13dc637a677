import { z } from 'zod'

/** A UUID; version 7 for everything made here. */
export const Id = z.uuid().meta({ id: 'Id', description: 'UUID version 7.' })
export const InstantText = z.iso.datetime().meta({ id: 'Instant', description: 'UTC, ISO 8601, milliseconds.' })
export const Temperature = z.number().min(-90).max(200).describe('degrees Celsius')
export const Duration = z.number().min(0).max(604_800).describe('seconds')
/** Text without control characters but tabs and line ends: no screen shows them, and a database may refuse them. */
export const Text = (most: number) =>
  z
    .string()
    .max(most)
    .regex(/^(?:\P{Cc}|[\t\n\r])*$/u, 'a text without control characters')
export const Name = Text(120).trim().min(1)
export const Note = Text(4000)
export const UnitSystem = z.enum(['metric', 'us'])
export const Paper = z.enum(['A4', 'Letter'])

/** How a number came about, line by line, each with where it comes from. */
export const Working = z.array(z.object({ line: z.string(), source: z.string() }))

/** One problem, as every error answer carries it. */
export const ProblemBody = z
  .object({
    code: z.string(),
    sentence: z.string(),
    details: z.record(z.string(), z.unknown()),
    field: z.string().optional(),
    help: z.string(),
  })
  .meta({ id: 'Problem', description: 'What was wrong, with the value, and what would be right.' })

export const IdParams = z.object({ id: Id })
export const Revision = z.int().min(1)
/** Which revision the person was looking at; a write against an older one is refused. */
export const Seen = z.strictObject({ seen_revision: Revision })
export const Nothing = z.strictObject({})
/** A file that is not JSON; its media type says what it is. */
export const FileBody = z.string().meta({ format: 'binary' })
