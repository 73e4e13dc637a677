import { openDemo, useBench, useWrite } from '../api/index.js'
import { go } from '../navigation/index.js'
import { Trouble } from './Asked.js'
import { Button } from './Button.js'

/** Opens the demo bench in this window; one that another window has open is joined. */
export function OpenDemo({ className, home = false }: { className?: string; home?: boolean }) {
  const open = useWrite(() => openDemo({}), 'bench')
  return (
    <>
      <Button
        {...(className ? { className } : {})}
        onClick={() => open.mutate(undefined, { onSuccess: () => home && go('/') })}
        waits={open.isPending}
      >
        Open the demo bench
      </Button>
      {open.isError && <Trouble fault={open.error} />}
    </>
  )
}

/** Under an empty page of one's own bench: that a full one can be looked at first. */
export function LookAtDemo({ words }: { words: string }) {
  if (useBench().data?.kind !== 'own') return null
  return (
    <div className="row">
      <p>{words}</p>
      <OpenDemo />
    </div>
  )
}
