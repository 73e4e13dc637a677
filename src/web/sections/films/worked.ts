import { nameKey } from '../../../kernel/index.js'
import type { RunSummary } from '../../shared/api/index.js'

/** One tank of a run in which a film was, with what its negatives said. */
export interface Worked {
  readonly run: RunSummary
  readonly tank: RunSummary['tanks'][number]
  /** The verdict that stands on this tank. */
  readonly verdict: RunSummary['verdicts'][number] | null
}

/** What was done with a film, newest first, a row for each tank that it was in. */
export const tanksOf = (runs: readonly RunSummary[], film: string): Worked[] =>
  runs.flatMap((run) =>
    run.tanks
      .filter(({ on_reels }) => on_reels.some((one) => nameKey(one.film) === nameKey(film)))
      .map((tank) => ({
        run,
        tank,
        verdict: run.verdicts.find(({ stands, tank: name }) => stands && name === tank.tank) ?? null,
      })),
  )

/**
 * The one that worked best: negatives that were called right, with the fewest marks, then the development nearest to
 * its plan, then the newest. Null while none was called right.
 */
export function bestOf(worked: readonly Worked[]): Worked | null {
  const right = worked.filter(({ verdict }) => verdict?.density === 'right')
  return right.toSorted((a, b) => marksOn(a) - marksOn(b) || strayed(a) - strayed(b))[0] ?? null
}

const marksOn = ({ verdict }: Worked): number => verdict?.marks.length ?? 0

/** How far development was from its plan; a tank without a measure of it comes last. */
function strayed({ run, tank }: Worked): number {
  const done = run.outcome.find(({ tank: name }) => name === tank.tank)?.equivalent?.fraction
  return done === undefined ? Number.MAX_VALUE : Math.abs(Math.log(done))
}
