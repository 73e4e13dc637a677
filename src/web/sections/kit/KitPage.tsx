import { say, type Writer } from '../../../words/index.js'
import type { VesselRecord } from '../../shared/api/index.js'
import { useVessels } from '../../shared/desk/index.js'
import { Link } from '../../shared/navigation/index.js'
import { Asked, ButtonLink, Page, useWriter, Words } from '../../shared/ui/index.js'

type Statement = VesselRecord['statement']
const GROUPS: readonly (readonly [string, readonly Statement['kind'][]])[] = [
  ['Tanks', ['tank']],
  ['Reels', ['reel']],
  ['Graduates and syringes', ['graduate', 'syringe']],
]

/** Tanks, reels, and what measures: each with what has to be known of it before a plan. */
export function KitPage() {
  const vessels = useVessels()
  const writer = useWriter()
  return (
    <Page
      title="Kit"
      lead={<Words>{say('kit.lead', {}, writer)}</Words>}
      actions={
        <>
          <ButtonLink href="/shelf">Thermometers</ButtonLink>
          <ButtonLink look="go" href="/shelf/kit/new">
            Add to the kit
          </ButtonLink>
        </>
      }
    >
      <Asked query={vessels}>
        {(all) =>
          all.length === 0 ? (
            <p className="lead">
              <strong>{say('kit.none', {}, writer)}</strong> <Words>{say('kit.none.why', {}, writer)}</Words>
            </p>
          ) : (
            GROUPS.map(([title, kinds]) => (
              <Group key={title} title={title} all={all.filter(({ statement }) => kinds.includes(statement.kind))} />
            ))
          )
        }
      </Asked>
    </Page>
  )
}

function Group({ title, all }: { title: string; all: readonly VesselRecord[] }) {
  const writer = useWriter()
  if (all.length === 0) return null
  return (
    <section>
      <h2>{title}</h2>
      <ul className="rows">
        {all.map(({ id, statement }) => (
          <li key={id}>
            <Link className="row-link" href={`/shelf/kit/${id}`}>
              <strong>{statement.name}</strong>
              <span className="row-figure">
                {statement.kind === 'reel' && (statement.wet_at === null ? 'dry' : 'wet')}
              </span>
              <span className="small row-more">
                <Words>{aboutVessel(statement, writer)}</Words>
              </span>
            </Link>
          </li>
        ))}
      </ul>
    </section>
  )
}

function aboutVessel(statement: Statement, writer: Writer): string {
  if (statement.kind === 'tank') return say('kit.tank', statement, writer)
  if (statement.kind === 'reel') return say('kit.reel', statement, writer)
  return say('kit.graduate', { holds: statement.holds_ml, marks: statement.marked_every_ml }, writer)
}
