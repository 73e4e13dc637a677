import { celsius } from '../../../../kernel/index.js'
import type { ThermometerRecord } from '../../../../wire/index.js'
import { say } from '../../../../words/index.js'
import { useBench, useWrite } from '../../../shared/api/index.js'
import { withdrawCheck } from '../../../shared/desk/index.js'
import { Button, sentenceOf, useTell, useWriter, Words } from '../../../shared/ui/index.js'
import { METHOD_NAMES } from '../kinds.js'

/** Every check as it was made. One that was wrong is withdrawn and counts for nothing; it stays on record. */
export function Checks({ one }: { one: ThermometerRecord }) {
  if (one.checks.length === 0) return null
  return (
    <section aria-labelledby="checks">
      <h2 id="checks">Checks</h2>
      <ul className="checks">
        {one.checks.map((check) => (
          <CheckRow key={check.id} check={check} />
        ))}
      </ul>
    </section>
  )
}

function CheckRow({ check }: { check: ThermometerRecord['checks'][number] }) {
  const writer = useWriter()
  const tell = useTell()
  const zone = useBench().data?.zone
  const withdraw = useWrite(() => withdrawCheck(check.id, {}), 'thermometers')
  const day = new Date(check.at).toLocaleDateString('en-GB', {
    day: 'numeric',
    month: 'short',
    ...(zone ? { timeZone: zone } : {}),
  })
  const sentence = say('shelf.check', { read: celsius(check.read_c), true: celsius(check.true_c) }, writer)
  const withdrawIt = () =>
    withdraw.mutate(undefined, {
      onSuccess: () => tell({ sentence: say('shelf.withdrawn', {}, writer) }),
      onError: (fault) => tell({ sentence: sentenceOf(fault) }),
    })
  return (
    <li>
      <p>
        {check.withdrawn ? (
          <s>
            <Words>{sentence}</Words>
          </s>
        ) : (
          <Words>{sentence}</Words>
        )}
        <br />
        <span className="small">
          {day}, {METHOD_NAMES[check.method]}
          {check.withdrawn && '; withdrawn'}
        </span>
      </p>
      {!check.withdrawn && (
        <Button look="bare" onClick={withdrawIt} waits={withdraw.isPending} aria-label={`Withdraw the check of ${day}`}>
          Withdraw
        </Button>
      )}
    </li>
  )
}
