import { z } from 'zod'
import { Id, InstantText, Name, Paper, UnitSystem } from './common.js'

export const Settings = z
  .strictObject({
    name: Name,
    units: UnitSystem,
    paper: Paper,
    zone: z.string().min(1).max(60).describe('IANA time zone of the bench.'),
  })
  .meta({ id: 'Settings' })
export const BenchView = Settings.extend({
  bench_id: Id,
  kind: z.enum(['own', 'demo']),
  demo_exists: z.boolean(),
  role: z.enum(['owner', 'device']),
}).meta({ id: 'BenchView' })

/** The next sensible step, and what is here. The words are made from the code by the words catalogue. */
export const TodayView = z
  .object({
    bench: BenchView,
    step: z.object({
      code: z.enum(['first-time', 'first-thermometer', 'check-thermometer', 'widen-times', 'ask-a-time']),
      subject: z.string().nullable(),
      subject_id: Id.nullable(),
    }),
    counts: z.object({ times: z.int(), films: z.int(), thermometers: z.int() }),
    recent: z.array(z.object({ id: Id, film: z.string(), developer: z.string(), saved_at: InstantText })),
    drying: z
      .array(
        z.object({
          id: Id,
          number: z.string(),
          film: z.string(),
          hook: z.string(),
          since: InstantText,
          ready_at: InstantText.nullable().describe('From when it may be sleeved; null until it hangs.'),
          dry_by: z
            .enum(['kept', 'own-record', 'usual'])
            .nullable()
            .describe('Who says so: what is kept of the film, how soon its last rolls were sleeved, common practice.'),
        }),
      )
      .describe('Rolls that hang, or are to be hung.'),
  })
  .meta({ id: 'TodayView' })

export const RestoreResult = z
  .object({ tables: z.int(), rows: z.int(), data_version: z.int() })
  .meta({ id: 'RestoreResult' })
export const DemoResult = z.object({ bench_id: Id }).meta({ id: 'DemoResult' })
export const Health = z
  .object({
    status: z.literal('ready'),
    engine: z.enum(['sqlite', 'postgres']),
    now: InstantText.describe('The server’s clock, for devices that follow a run.'),
  })
  .meta({ id: 'Health' })
