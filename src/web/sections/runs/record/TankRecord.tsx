import type { Deviation, RunState, Score, TankFollowing } from '../../../../score/index.js'
import { say, statedMoment, type Writer, writeTimeOfDay } from '../../../../words/index.js'
import type { Run } from '../../../shared/api/index.js'
import { useWriter, Words } from '../../../shared/ui/index.js'
import { sayOf } from '../names.js'
import { StepTable } from './StepTable.js'
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
      <p className="lead">
        <strong>Tank {tank.tank}.</strong>{' '}
        <Words>
          {tank.developed === null ? say('record.fixed', {}, writer) : say('run.equivalent', tank.developed, writer)}
        </Words>
      </p>
      <section>
        <h2>{say('record.deviations', {}, writer)}</h2>
        <ul className="told">
          {deviationsOf(tank, zone, writer).map((sentence) => (
            <li key={sentence}>
              <Words>{sentence}</Words>
            </li>
          ))}
        </ul>
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

export function deviationsOf({ deviations }: TankFollowing, zone: string, writer: Writer): string[] {
  if (deviations.length === 0) return [say('record.no-deviations', {}, writer)]
  return deviations.map((deviation) => deviationSentence(deviation, zone, writer))
}

const deviationSentence = (deviation: Deviation, zone: string, writer: Writer): string =>
  deviation.code === 'mishap'
    ? say(
        'record.mishap',
        { what: sayOf(`mishap.${deviation.mishap}`, {}, writer), at: writeTimeOfDay(deviation.at, zone) },
        writer,
      )
    : sayOf(`run.deviation.${deviation.code}`, deviation, writer)
