import type { BenchView } from '../../../wire/index.js'
import { say } from '../../../words/index.js'
import { removeDemo, useWrite } from '../../shared/api/index.js'
import { Button, OpenDemo, Trouble, useWriter } from '../../shared/ui/index.js'

export function DemoPart({ bench }: { bench: BenchView }) {
  const writer = useWriter()
  const remove = useWrite(() => removeDemo({}), 'bench')
  const here = bench.kind === 'demo'
  return (
    <section aria-labelledby="demo">
      <h2 id="demo">Demo bench</h2>
      <p>{say(here ? 'house.demo-open' : 'house.demo', {}, writer)}</p>
      <div className="row">
        {here ? (
          <Button onClick={() => remove.mutate(undefined)} waits={remove.isPending}>
            Remove the demo bench
          </Button>
        ) : (
          <OpenDemo home />
        )}
      </div>
      {remove.isError && <Trouble fault={remove.error} />}
    </section>
  )
}
