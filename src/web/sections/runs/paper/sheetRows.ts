import { changeOf, isBath, type Job, type Score, type TankPlan } from '../../../../score/index.js'
import { say, type Writer } from '../../../../words/index.js'

/** A row of the bench sheet that has boxes for times. */
export interface SheetRow {
  readonly id: string
  readonly tank: string
  readonly heading: string
  /** Seconds from the run's zero, as it stands on the sheet. */
  readonly moment: number
  /** Places of the steps whose boxes it has; null where it has none of that kind. */
  readonly out: number | null
  readonly in: number | null
  readonly done: number | null
  /** Of a look at the film: how long it took to clear. */
  readonly clears: boolean
}

/** The rows in the order of the sheet. */
export function sheetRows(score: Score, writer: Writer): SheetRow[] {
  return score.tanks
    .flatMap((plan) => plan.jobs.flatMap((job) => rowOf(plan, job, score.tanks.length > 1, writer)))
    .sort((a, b) => a.moment - b.moment)
}

function rowOf(plan: TankPlan, job: Job, several: boolean, writer: Writer): SheetRow[] {
  const { tank, laid } = plan
  const step = laid[job.index]?.step
  if (step === undefined || job.kind === 'turn' || job.kind === 'check') return []
  const row = (heading: string, boxes: Partial<SheetRow>): SheetRow[] => [
    {
      id: `${tank.tank}/${job.id}`,
      tank: tank.tank,
      heading: several ? say('sheet.of-tank', { tank: tank.tank, text: heading }, writer) : heading,
      moment: tank.offset + job.start,
      ...{ out: null, in: null, done: null, clears: false },
      ...boxes,
    },
  ]
  const { name } = step
  if (!isBath(step)) return row(name, { done: job.index, clears: step.kind === 'look' })
  if (job.kind === 'drain') return row(say('sheet.job.out', { name }, writer), { out: job.index })
  const { how, drained, ...names } = changeOf(laid, job)
  return row(say(`sheet.job.${how}`, names, writer), { out: drained?.index ?? null, in: job.index })
}
