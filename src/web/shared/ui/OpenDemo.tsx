import { say } from '../../../words/index.js'
import { openDemo, removeDemo, useBench, useWrite } from '../api/index.js'
import { go } from '../navigation/index.js'
import { Trouble } from './Asked.js'
import { Button } from './Button.js'

/** Opens the demo bench in this window. One that another window has open gives way to a fresh one, all invented. */
export function OpenDemo({ className, home = false }: { className?: string; home?: boolean }) {
  const exists = useBench().data?.demo_exists ?? false
  const open = useWrite(async (afresh: boolean) => {
    if (afresh) await removeDemo({})
    return openDemo({})
  }, 'bench')
  const opening = () => open.mutate(exists, { onSuccess: () => home && go('/') })
  return (
    <>
      {exists && <p>{say('house.demo-elsewhere', {}, 'metric')}</p>}
      <Button {...(className ? { className } : {})} onClick={opening} waits={open.isPending}>
        {exists ? 'Open a fresh one here' : 'Open the demo bench'}
      </Button>
      {open.isError && <Trouble fault={open.error} />}
    </>
  )
}
