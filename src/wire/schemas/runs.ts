import { z } from 'zod'
import { Id, InstantText, Note, Paper, Text } from './common.js'
import { RunEvent } from './events.js'
import { PlannedTank, RunPlan, TankName } from './plans.js'

/** An event as kept. `seq` counts without gaps within its run; who has seen `seq` asks for what came after. */
export const KeptEvent = z.object({ seq: z.int(), received_at: InstantText, event: RunEvent }).meta({ id: 'KeptEvent' })
export const AddRunEvents = z.strictObject({ events: z.array(RunEvent).min(1).max(500) }).meta({ id: 'AddRunEvents' })
export const RunEvents = z
  .object({ events: z.array(KeptEvent), last_seq: z.int().describe('Number of the run’s newest event.') })
  .meta({ id: 'RunEvents' })

export const RunState = z.enum(['planned', 'running', 'finished', 'abandoned'])

const Judgement = {
  tank: TankName,
  density: z.enum(['thin', 'right', 'dense']).nullable(),
  marks: z
    .array(z.enum(['uneven', 'streaks', 'bubbles', 'half-moons', 'scratches', 'drying-marks', 'fogged', 'milky']))
    .max(8),
  note: Note,
}
/** What the negatives look like, days later. A second one for a tank corrects the first, which stays. */
export const JudgeRun = z
  .strictObject({ ...Judgement, marks: Judgement.marks.default([]), note: Note.default('') })
  .meta({ id: 'JudgeRun' })
export const RunVerdict = z
  .object({ ...Judgement, id: Id, at: InstantText, by: z.string(), stands: z.boolean() })
  .meta({ id: 'RunVerdict' })

/** Development against plan: 1 is as planned; what the thermometer’s error makes of it lies between low and high. */
export const Equivalent = z
  .object({ done_s: z.number(), target_s: z.number(), fraction: z.number(), low: z.number(), high: z.number() })
  .meta({ id: 'Equivalent' })
export const TankOutcome = z
  .object({
    tank: TankName,
    phase: z.enum(['not-started', 'running', 'done', 'abandoned']),
    equivalent: Equivalent.nullable(),
  })
  .meta({ id: 'TankOutcome' })

const summary = {
  id: Id,
  planned_at: InstantText,
  state: RunState,
  started_at: InstantText.nullable(),
  ended_at: InstantText.nullable(),
  verdicts: z.array(RunVerdict),
  outcome: z
    .array(TankOutcome)
    .describe('How each tank stands by what is known; empty while the time of a device is in doubt.'),
}
export const Run = z
  .object({ ...summary, plan: RunPlan, events: z.array(KeptEvent), last_seq: z.int() })
  .meta({ id: 'Run' })
export const RunSummary = z
  .object({
    ...summary,
    practice: RunPlan.shape.practice.unwrap(),
    tanks: z.array(
      z.object({
        tank: TankName,
        recipe_name: z.string(),
        process: PlannedTank.shape.recipe.shape.process,
        on_reels: PlannedTank.shape.on_reels,
        developer: z.string(),
        dilution_parts: PlannedTank.shape.dilution_parts.unwrap(),
        temperature_c: z.number().nullable(),
        time_s: z.number().nullable().describe('Developing time as planned.'),
      }),
    ),
  })
  .meta({ id: 'RunSummary' })
export const RunSummaries = z
  .object({ runs: z.array(RunSummary), more: z.boolean().describe('Whether there are older ones.') })
  .meta({ id: 'RunSummaries' })

const Count = (most: number) =>
  z.preprocess((text) => (typeof text === 'string' && /^\d{1,9}$/.test(text) ? Number(text) : text), z.int().max(most))
const Flag = z.enum(['true', 'false']).transform((text) => text === 'true')
export const RunsQuery = z.strictObject({
  film: Text(120).optional().describe('Only runs with this film in a tank; capitals do not matter.'),
  ended: Flag.optional().describe('Only runs that have ended, or have not.'),
  practice: Flag.optional().describe('Only practice runs, or none.'),
  before: Id.optional().describe('Only runs older than this one: the next page.'),
  limit: Count(100).optional().describe('At most so many; 20 when not given.'),
})
export const EventsQuery = z.strictObject({ after: Count(999_999_999).optional() })
export const AbandonRun = z.strictObject({ reason: Text(1000).trim().min(1) }).meta({ id: 'AbandonRun' })
export const PaperQuery = z.strictObject({ paper: Paper.optional() })
