import { writePartialDay } from '../../../../kernel/index.js'
import { say } from '../../../../words/index.js'
import { type RollRecord, useRoll } from '../../../shared/api/index.js'
import { Link } from '../../../shared/navigation/index.js'
import { Asked, ButtonLink, Page, useWriter, Words } from '../../../shared/ui/index.js'
import { aboutRoll } from '../about.js'
import { StickersLink } from '../paper/PaperLink.js'
import { stateWord, stepsFrom } from '../states.js'
import { StepForm } from '../steps/StepForm.js'
import { History } from './History.js'

export function RollPage({ params }: { params: Record<string, string> }) {
  return <Asked query={useRoll(params.id ?? '')}>{(roll) => <One roll={roll} />}</Asked>
}

/** One roll: where it is, what is known of it, its next step, and all that happened to it. */
function One({ roll }: { roll: RollRecord }) {
  const writer = useWriter()
  const ended = stepsFrom(roll.state).length === 0
  return (
    <Page
      title={`${roll.number} ${roll.film}`}
      lead={
        <Words>
          {[stateWord(roll.state, writer), ...(roll.hook === '' ? [] : [roll.hook]), aboutRoll(roll, writer)].join(
            '; ',
          )}
        </Words>
      }
      actions={
        <>
          <ButtonLink href="/rolls">All rolls</ButtonLink>
          <StickersLink of={{ roll_ids: [roll.id] }} />
          <ButtonLink href={`/rolls/${roll.id}/edit`}>Correct it</ButtonLink>
        </>
      }
    >
      <div className="roll-body">
        <div>
          <h2>Next</h2>
          {ended ? (
            <p className="quiet">{say('rolls.ended', { state: roll.state }, writer)}</p>
          ) : (
            <StepForm rolls={[roll]} />
          )}
          <h2>What happened to it</h2>
          <History roll={roll} />
        </div>
        <Facts roll={roll} />
      </div>
    </Page>
  )
}

function Facts({ roll }: { roll: RollRecord }) {
  const writer = useWriter()
  return (
    <aside aria-label="What is known of it">
      <dl className="due">
        <dt>Whose</dt>
        <dd>{roll.whose ?? 'own film'}</dd>
        {roll.order_id !== null && (
          <>
            <dt>Order</dt>
            <dd>
              <Link href={`/rolls/orders/${roll.order_id}`}>{`Order of ${roll.whose ?? 'somebody'}`}</Link>
            </dd>
          </>
        )}
        {roll.twin !== null && (
          <>
            <dt>Stickers</dt>
            <dd>{say('roll.twin', { twin: roll.twin }, writer)}</dd>
          </>
        )}
        <dt>Due</dt>
        <dd>{roll.due === null ? 'no day was said' : writePartialDay(roll.due)}</dd>
        {roll.run_id !== null && (
          <>
            <dt>Run</dt>
            <dd>
              <Link href={`/runs/${roll.run_id}/record`}>The run it went through</Link>
            </dd>
          </>
        )}
        <dt>Note</dt>
        <dd className="roll-note">{roll.note === '' ? 'none' : roll.note}</dd>
      </dl>
    </aside>
  )
}
