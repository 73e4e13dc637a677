import type { Instant } from '../../../../kernel/index.js'
import { fold, follow, type Score, typedInAt } from '../../../../score/index.js'
import { say, writeDay, writeMinuteOfDay, writeTimeOfDay } from '../../../../words/index.js'
import { type Run, runRecordAddress, useBench, useRun } from '../../../shared/api/index.js'
import { deviceClock } from '../../../shared/platform/index.js'
import { Asked, ButtonLink, Page, useWriter, Words } from '../../../shared/ui/index.js'
import { eventOf, scoreOf } from '../engine/shapes.js'
import { RecordScore } from './RecordScore.js'
import { TankRecord } from './TankRecord.js'

/** What became of a run. */
export function RecordPage({ params }: { params: Record<string, string> }) {
  const run = useRun(params['id'] ?? '')
  return <Asked query={run}>{(found) => <Scored run={found} />}</Asked>
}

function Scored({ run }: { run: Run }) {
  const score = scoreOf(run)
  return score.ok ? (
    <Record run={run} score={score.value} />
  ) : (
    <Page title="Record">
      <p className="note">{score.problem.sentence}</p>
    </Page>
  )
}

function Record({ run, score }: { run: Run; score: Score }) {
  const writer = useWriter()
  const zone = useBench().data?.zone ?? 'UTC'
  const state = fold(score, run.events.map(eventOf))
  const until = lookedAt(run, state.events.at(-1)?.at)
  const following = follow(score, state, until)
  const begun = state.events.find(({ stands }) => stands)?.at
  const typed = typedInAt(state)
  const { tanks } = run.plan
  const films = [...new Set(tanks.flatMap(({ on_reels }) => on_reels.map(({ film }) => film)))].join(', ')
  const recipe = [...new Set(tanks.map((tank) => tank.recipe.name))].join(', ')
  return (
    <Page
      title={say('run.title', { films, recipe }, writer)}
      lead={
        begun === undefined
          ? say('record.page.lead-none', {}, writer)
          : say('record.begun', { day: writeDay(begun, zone), at: writeTimeOfDay(begun, zone), zone }, writer)
      }
      actions={
        <>
          {run.ended_at === null && <ButtonLink href={`/runs/${run.id}`}>Go to the tank</ButtonLink>}
          {typed !== undefined && (
            <ButtonLink href={`/runs/${run.id}/paper`}>{say('paper.correct', {}, writer)}</ButtonLink>
          )}
          <a className="btn" href={runRecordAddress(run.id)} target="_blank" rel="noreferrer">
            Print the record
          </a>
        </>
      }
    >
      {typed !== undefined && (
        <p className="quiet">
          {say('record.from-paper', { day: writeDay(typed, zone), at: writeMinuteOfDay(typed, zone) }, writer)}
        </p>
      )}
      {run.plan.practice !== null && <p className="note">{say('record.page.practice', {}, writer)}</p>}
      {following.doubts.length > 0 && <p className="note">{say('doubt.why', {}, writer)}</p>}
      <RecordScore score={score} following={following} until={until} name={recipe} />
      {following.tanks.map((tank) => (
        <TankRecord key={tank.tank} run={run} score={score} tank={tank} state={state} zone={zone} />
      ))}
      {run.plan.note !== '' && (
        <section>
          <h2>Note</h2>
          <p>
            <Words>{run.plan.note}</Words>
          </p>
        </section>
      )}
    </Page>
  )
}

/** A run that is over is looked at from its end, one that goes on from now. */
const lookedAt = (run: Run, last: Instant | undefined): Instant =>
  run.ended_at === null ? Math.max(last ?? 0, deviceClock.wall()) : Date.parse(run.ended_at)
