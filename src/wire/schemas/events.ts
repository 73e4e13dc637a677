import { z } from 'zod'
import { DegreesCelsius, InSeconds, InstantMs, MonotonicMs, Token } from './branded.js'
import { Id, Text } from './common.js'
import { TankName } from './plans.js'

const clocks = {
  life: Token.describe('One loading of a page; monotonic time counts from its start.'),
  monotonicMs: MonotonicMs,
  wallMs: InstantMs,
  serverOffsetMs: InstantMs.nullable().describe('Server’s clock minus this life’s monotonic clock.'),
}
const stamp = {
  id: Id,
  device: Token,
  ...clocks,
  statedMs: InstantMs.nullable().optional().describe('The moment as a person states it: a run typed in from paper.'),
  statedTo: z
    .enum(['second', 'minute', 'placed'])
    .nullable()
    .optional()
    .describe(
      'How well statedMs is stated: to the second, to the minute (its middle is taken), or placed at its step.',
    ),
  tank: TankName,
  bath: z.int().min(0).max(200).nullable().describe('Step of the tank’s list, from 0; null for the whole tank.'),
  actor: Text(120),
}
const Reason = Text(1000)
const event = <K extends string, S extends z.core.$ZodLooseShape>(kind: K, fields: S) =>
  z.strictObject({ ...stamp, kind: z.literal(kind), ...fields })

/** What happened, written down once by a device and never changed; undo is an event too. */
export const RunEvent = z
  .discriminatedUnion('kind', [
    event('started', {}),
    event('poured-in', {}),
    event('poured-out', {}),
    event('reading', { temperature: DegreesCelsius, confirmed: z.boolean() }),
    event('step-done', { clearing: InSeconds.nullable().optional() }),
    event('skipped', { reason: Reason }),
    event('mishap', {
      mishap: z.enum([
        'fixer-first',
        'developer-short',
        'wrong-dilution',
        'lid-came-off',
        'tank-leaks',
        'stop-skipped',
        'power-or-phone-dead',
      ]),
      referenceTime: InSeconds.nullable().optional(),
    }),
    event('noted', { text: Text(4000) }),
    event('retracted', { of: Id }),
    event('abandoned', { reason: Reason }),
    event('finished', {}),
    event('resumed', { previous: z.strictObject(clocks) }),
    event('clock-settled', { life: Token, choice: z.enum(['by-wall', 'continued']) }),
  ])
  .meta({ id: 'RunEvent' })
