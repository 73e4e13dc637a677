import { say } from '../../../../words/index.js'
import { openDemo, useToday, useWrite } from '../../../shared/api/index.js'
import { Button, Trouble, useWriter } from '../../../shared/ui/index.js'

/** Before there is a time: what to look for, and where a look at a full bench can be had. */
export function NoTimes() {
  const writer = useWriter()
  const demo = useToday().data?.bench.demo_exists === false
  const open = useWrite(() => openDemo({}), 'bench')
  return (
    <div className="teach">
      <p className="lead">
        <strong>{say('times.none', {}, writer)}</strong> {say('times.none.how', {}, writer)}
      </p>
      {demo && (
        <p className="row">
          <span>{say('times.none.look', {}, writer)}</span>
          <Button onClick={() => open.mutate(undefined)} waits={open.isPending}>
            Open the demo bench
          </Button>
        </p>
      )}
      {open.isError && <Trouble fault={open.error} />}
    </div>
  )
}
