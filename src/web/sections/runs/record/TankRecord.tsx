import type { RunState, Score, TankFollowing } from '../../../../score/index.js'
import { say, statedMoment } from '../../../../words/index.js'
import type { Run } from '../../../shared/api/index.js'
import { useWriter, Words } from '../../../shared/ui/index.js'
import { OnReels } from './OnReels.js'
import { StepTable } from './StepTable.js'
import { Developed, Deviations } from './Told.js'
import { VerdictForm } from './VerdictForm.js'

interface TankRecordProps {
  readonly run: Run
  readonly score: Score
  readonly tank: TankFollowing
  readonly state: RunState
  readonly zone: string
}

/** One tank: its development against plan, what differed, each step, what the negatives say. */
export function TankRecord({ run, score, tank, state, zone }: TankRecordProps) {
  const writer = useWriter()
  const began = score.tanks.find(({ tank: { tank: name } }) => name === tank.tank)
  const notes = state.tanks.find(({ tank: name }) => name === tank.tank)?.notes ?? []
  return (
    <div className="tank-record">
      {score.tanks.length > 1 && <h2>{say('plan.tank', { tank: tank.tank }, writer)}</h2>}
      <OnReels run={run} tank={tank.tank} />
      <Developed tank={tank} />
      <section>
        <h2>{say('record.deviations', {}, writer)}</h2>
        <Deviations tank={tank} zone={zone} />
      </section>
      {began !== undefined && <StepTable tank={tank} began={began} zone={zone} />}
      {tank.readings.length > 0 && (
        <section>
          <h2>{say('record.readings', {}, writer)}</h2>
          <ul className="told">
            {tank.readings.map(({ id, at, temperature, expected, statedTo }) => (
              <li key={id}>
                <Words>
                  {say(
                    'record.reading',
                    { at: statedMoment(at, statedTo, zone, writer), temperature, expected },
                    writer,
                  )}
                </Words>
              </li>
            ))}
          </ul>
        </section>
      )}
      {notes.length > 0 && (
        <section>
          <h2>{say('record.noted-then', {}, writer)}</h2>
          {notes.map(({ event: { id, statedTo, text }, at }) => (
            <p key={id}>
              {statedTo === 'placed'
                ? say('record.noted-only', { text }, writer)
                : say('record.noted', { at: statedMoment(at, statedTo, zone, writer), text }, writer)}
            </p>
          ))}
        </section>
      )}
      <VerdictForm run={run} tank={tank.tank} />
    </div>
  )
}
