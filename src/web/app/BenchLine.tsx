import { say } from '../../words/index.js'
import { removeDemo, useBench, useWrite } from '../shared/api/index.js'
import { go } from '../shared/navigation/index.js'
import { useOnline } from '../shared/platform/index.js'
import { Button, sentenceOf, useTell } from '../shared/ui/index.js'

/** One quiet line above the page where something about the bench as a whole has to be known. */
export function BenchLine() {
  const bench = useBench()
  const online = useOnline()
  const away = !online || (bench.isError && bench.data !== undefined)
  return (
    <>
      {away && (
        <p className="bench-line" role="status">
          {say('web.offline', {}, 'metric')}
        </p>
      )}
      {bench.data?.kind === 'demo' && <DemoLine />}
    </>
  )
}

function DemoLine() {
  const tell = useTell()
  const remove = useWrite(() => removeDemo({}), 'bench')
  const removeIt = () =>
    remove.mutate(undefined, {
      onSuccess: () => {
        go('/')
        tell({ sentence: say('web.demo-removed', {}, 'metric') })
      },
      onError: (fault) => tell({ sentence: sentenceOf(fault) }),
    })
  return (
    <div className="bench-line">
      <p>{say('web.demo', {}, 'metric')}</p>
      <Button look="bare" onClick={removeIt} waits={remove.isPending}>
        Remove it
      </Button>
    </div>
  )
}
