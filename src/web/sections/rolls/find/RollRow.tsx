import { say } from '../../../../words/index.js'
import type { RollSummary } from '../../../shared/api/index.js'
import { Link } from '../../../shared/navigation/index.js'
import { useWriter, Words } from '../../../shared/ui/index.js'
import { aboutRoll } from '../about.js'
import { stateWord } from '../states.js'

interface RollRowProps {
  readonly roll: RollSummary
  readonly picked?: boolean
  /** Left out where rolls are only looked at. */
  readonly pick?: (id: string) => void
}

/** One roll in words: its number and film, where it is, what it is and whose. */
export function RollRow({ roll, picked = false, pick }: RollRowProps) {
  const writer = useWriter()
  const { number, film, state, whose, due } = roll
  const parts = [
    aboutRoll(roll, writer),
    ...(whose === null ? [] : [say('rolls.of', { whose }, writer)]),
    ...(due === null ? [] : [say('rolls.due', { due }, writer)]),
  ]
  return (
    <li className={pick ? 'roll-row' : undefined}>
      {pick && (
        <label className="roll-pick">
          <input type="checkbox" aria-label={`Choose ${number}`} checked={picked} onChange={() => pick(roll.id)} />
        </label>
      )}
      <Link className="row-link" href={`/rolls/${roll.id}`}>
        <span>
          <span className="roll-number">{number}</span> <strong>{film}</strong>
        </span>
        <span className="row-figure">{stateWord(state, writer)}</span>
        <span className="small row-more">
          <Words>{parts.join('; ')}</Words>
        </span>
      </Link>
    </li>
  )
}
