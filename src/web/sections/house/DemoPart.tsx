import type { BenchView } from '../../../wire/index.js'
import { say } from '../../../words/index.js'
import { openDemo, removeDemo, useWrite } from '../../shared/api/index.js'
import { go } from '../../shared/navigation/index.js'
import { Button, Trouble, useWriter } from '../../shared/ui/index.js'

export function DemoPart({ bench }: { bench: BenchView }) {
  const writer = useWriter()
  const open = useWrite(() => openDemo({}), 'bench')
  const remove = useWrite(() => removeDemo({}), 'bench')
  const elsewhere = bench.demo_exists && bench.kind === 'own'
  const sentence = elsewhere ? 'house.demo-elsewhere' : bench.demo_exists ? 'house.demo-open' : 'house.demo'
  const opening = () => open.mutate(undefined, { onSuccess: () => go('/') })
  return (
    <section aria-labelledby="demo">
      <h2 id="demo">Demo bench</h2>
      <p>{say(sentence, {}, writer)}</p>
      {open.isError && <Trouble fault={open.error} />}
      {remove.isError && <Trouble fault={remove.error} />}
      <p className="row">
        {bench.demo_exists ? (
          <Button onClick={() => remove.mutate(undefined)} waits={remove.isPending}>
            Remove the demo bench
          </Button>
        ) : (
          <Button onClick={opening} waits={open.isPending}>
            Open the demo bench
          </Button>
        )}
      </p>
    </section>
  )
}
