import { say } from '../../../words/index.js'
import { ButtonLink, OpenDemo, useWriter } from '../../shared/ui/index.js'
import { EmptyGraph } from './EmptyGraph.js'

/** A bare bench teaches: where the first figure will be drawn, and a bench to look at first. */
export function BareBench() {
  const writer = useWriter()
  return (
    <>
      <section aria-labelledby="first-graph">
        <h2 id="first-graph">Your first time is drawn here</h2>
        <EmptyGraph />
        <p className="quiet">
          {say('today.table', {}, writer)}{' '}
          <ButtonLink look="bare" href="/times/paste">
            Paste a table
          </ButtonLink>
        </p>
      </section>
      <section aria-label="The demo bench" className="today-demo">
        <p>{say('today.demo', {}, writer)}</p>
        <OpenDemo className="step-button" />
      </section>
    </>
  )
}
