import type { Deviation, TankFollowing } from '../../../../score/index.js'
import { say, type Writer, writeTimeOfDay } from '../../../../words/index.js'
import { useWriter, Words } from '../../../shared/ui/index.js'
import { sayOf } from '../names.js'

/** What development came to against the plan. */
export function Developed({ tank: { tank, developed } }: { tank: TankFollowing }) {
  const writer = useWriter()
  return (
    <p className="lead">
      <strong>Tank {tank}.</strong>{' '}
      <Words>{developed === null ? say('record.fixed', {}, writer) : say('run.equivalent', developed, writer)}</Words>
    </p>
  )
}

/** Where a tank went another way than planned, in sentences. */
export function Deviations({ tank, zone }: { tank: TankFollowing; zone: string }) {
  const writer = useWriter()
  return (
    <ul className="told">
      {deviationsOf(tank, zone, writer).map((sentence) => (
        <li key={sentence}>
          <Words>{sentence}</Words>
        </li>
      ))}
    </ul>
  )
}

function deviationsOf({ deviations }: TankFollowing, zone: string, writer: Writer): string[] {
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
