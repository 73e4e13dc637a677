import { writePartialDay } from '../../../../kernel/index.js'
import { writeFormat } from '../../../../planning/index.js'
import { say } from '../../../../words/index.js'
import { Link } from '../../../shared/navigation/index.js'
import { useWriter } from '../../../shared/ui/index.js'
import { stateWord } from '../states.js'
import type { RowsProps } from './RollList.js'

/** The same rolls beside one another; on a phone it is moved sideways under the finger. */
export function RollTable({ rolls, picked, pick }: RowsProps) {
  const writer = useWriter()
  return (
    <section className="roll-table" aria-label="Rolls as a table">
      <table>
        <thead>
          <tr>
            <th scope="col">
              <span className="unseen">Chosen</span>
            </th>
            <th scope="col">Number</th>
            <th scope="col">Film</th>
            <th scope="col">Format</th>
            <th scope="col">Index</th>
            <th scope="col">Wanted</th>
            <th scope="col">Whose</th>
            <th scope="col">State</th>
            <th scope="col">Due</th>
          </tr>
        </thead>
        <tbody>
          {rolls.map((roll) => (
            <tr key={roll.id}>
              <td>
                <label className="roll-pick">
                  <input
                    type="checkbox"
                    aria-label={`Choose ${roll.number}`}
                    checked={picked.has(roll.id)}
                    onChange={() => pick(roll.id)}
                  />
                </label>
              </td>
              <th scope="row">
                <Link href={`/rolls/${roll.id}`}>{roll.number}</Link>
              </th>
              <td>{roll.film}</td>
              <td>{writeFormat(roll)}</td>
              <td>{roll.exposure_index ?? ''}</td>
              <td>
                {roll.treatment.as === 'normal'
                  ? 'as usual'
                  : say('rolls.wanted', { exposed_at: roll.exposure_index, wanted: roll.treatment }, writer)}
              </td>
              <td>{roll.whose ?? 'own'}</td>
              <td>{stateWord(roll.state, writer)}</td>
              <td>{roll.due === null ? '' : writePartialDay(roll.due)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}
