import { say } from '../../../words/index.js'
import { openDemo, useWrite } from '../../shared/api/index.js'
import { Button, ButtonLink, Trouble, useWriter } from '../../shared/ui/index.js'
import { EmptyGraph } from './EmptyGraph.js'

/** A bare bench teaches: where the first figure will be drawn, and a bench to look at first. */
export function BareBench({ demo }: { demo: boolean }) {
  const writer = useWriter()
  const open = useWrite(() => openDemo({}), 'bench')
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
      {demo && (
        <section aria-label="The demo bench">
          <p className="today-demo">{say('today.demo', {}, writer)}</p>
          <Button className="step-button" onClick={() => open.mutate(undefined)} waits={open.isPending}>
            Open the demo bench
          </Button>
          {open.isError && <Trouble fault={open.error} />}
        </section>
      )}
    </>
  )
}
