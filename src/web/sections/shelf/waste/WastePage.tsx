import { SILVER_RULE, WASTE_RULES } from '../../../../science/index.js'
import { say } from '../../../../words/index.js'
import { useShelf } from '../../../shared/desk/index.js'
import { Asked, ButtonLink, LookAtDemo, Page, useWriter, Words } from '../../../shared/ui/index.js'
import { ShelfNav } from '../ShelfNav.js'
import { Bar } from '../stand/Bar.js'
import { type Jug, JugSince } from '../stand/Jugs.js'
import { HandOverForm } from './HandOverForm.js'

/** Jugs of waste, how they are handed over, and the limits that others publish. */
export function WastePage() {
  const writer = useWriter()
  const shelf = useShelf()
  const jugs = shelf.data?.jugs ?? []
  const sum = (of: (jug: Jug) => number) => jugs.reduce((total, jug) => total + of(jug), 0)
  const all = {
    held: sum((jug) => jug.held_ml),
    low: sum((jug) => jug.silver_g.low),
    high: sum((jug) => jug.silver_g.high),
  }
  return (
    <Page
      title="Waste"
      lead={jugs.length > 0 && <Words>{say('jugs.lead', all, writer)}</Words>}
      actions={<ButtonLink href="/shelf/things/new?kind=jug">Add a jug</ButtonLink>}
    >
      <ShelfNav />
      <Asked query={shelf}>
        {(found) => (
          <div className="shelf">
            {found.jugs.length === 0 ? (
              <div className="teach">
                <p className="lead">
                  <strong>{say('jugs.none', {}, writer)}</strong> {say('jugs.none.how', {}, writer)}
                </p>
                <LookAtDemo words={say('times.none.look', {}, writer)} />
              </div>
            ) : (
              <ul className="rows jugs">
                {found.jugs.map((jug) => (
                  <JugPart key={jug.id} jug={jug} />
                ))}
              </ul>
            )}
            <Reference />
          </div>
        )}
      </Asked>
    </Page>
  )
}

function JugPart({ jug }: { jug: Jug }) {
  const writer = useWriter()
  return (
    <li className="jug">
      <div className="shelf-part-head">
        <h2>{jug.name}</h2>
        <ButtonLink look="bare" href={`/shelf/things/${jug.id}`} aria-label={`Correct ${jug.name}`}>
          Correct
        </ButtonLink>
      </div>
      <Bar part={jug.held_ml / jug.holds_ml} waste />
      <p>
        <Words>{say('jugs.room', { room: jug.holds_ml - jug.held_ml, holds: jug.holds_ml }, writer)}</Words>
        {'; '}
        <JugSince jug={jug} />
      </p>
      {jug.held_ml > 0 && (
        <>
          <p>
            <Words>{say('jug.silver', jug.silver_g, writer)}</Words>
            {jug.silver_rich_ml > 0 && (
              <span className="small">
                {' '}
                (<Words>{say('jugs.rich', { ml: jug.silver_rich_ml, rolls: jug.rolls }, writer)}</Words>)
              </span>
            )}
          </p>
          <details className="acts">
            <summary>Hand it over</summary>
            <HandOverForm jug={jug} />
          </details>
        </>
      )}
    </li>
  )
}

function Reference() {
  const writer = useWriter()
  return (
    <section aria-labelledby="limits" className="shelf-part">
      <h2 id="limits">Limits, for reference</h2>
      <p className="note">{say('jugs.codes', {}, writer)}</p>
      <p>{say('jugs.no-spoon', {}, writer)}</p>
      <ul className="rows limits">
        <li>
          <p>
            <Words>{say('jugs.rule.silver', { limit: SILVER_RULE.milligramsPerLitre }, writer)}</Words>
          </p>
          <p className="small">{say('jugs.source', { source: SILVER_RULE.source, year: SILVER_RULE.asOf }, writer)}</p>
        </li>
        {WASTE_RULES.map((rule) => (
          <li key={rule.id}>
            <p>{figureIn(rule)}</p>
            <p className="small">{say('jugs.source', { source: rule.source, year: rule.asOf }, writer)}</p>
          </li>
        ))}
      </ul>
    </section>
  )
}

/** A rule with its figure, which its sentence leaves to be shown. */
function figureIn({ says, figure }: (typeof WASTE_RULES)[number]): string {
  const { low, high, unit } = figure
  const amount = [low, high].filter((value) => value !== undefined).join(' to ')
  return amount === '' ? says : `${says} (${amount} ${unit})`
}
