import { type FormEvent, useState } from 'react'
import type { ThermometerRecord } from '../../../../wire/index.js'
import { say } from '../../../../words/index.js'
import { useWrite } from '../../../shared/api/index.js'
import { checkThermometer } from '../../../shared/desk/index.js'
import { Button, Choices, Trouble, useDraft, useTell, useUnits, useWriter, Words } from '../../../shared/ui/index.js'
import { CheckFields } from './CheckFields.js'
import { type CheckDraft, EMPTY_CHECK, METHODS, readCheck } from './checkDraft.js'
import { possibility } from './possibility.js'

/** How to find out what a thermometer's error is, and the place to note what was found. */
export function AddCheck({ one }: { one: ThermometerRecord }) {
  const writer = useWriter()
  const units = useUnits()
  const tell = useTell()
  const [tried, setTried] = useState(false)
  const { draft, change, clear } = useDraft<CheckDraft>(`check-${one.id}`, EMPTY_CHECK)
  const add = useWrite((body: Parameters<typeof checkThermometer>[1]) => checkThermometer(one.id, body), 'thermometers')
  const { refusal, cautions } = possibility(one, draft.method, writer)
  const reading = readCheck(draft, units)
  const keep = (event: FormEvent) => {
    event.preventDefault()
    setTried(true)
    if (!reading.body || refusal !== null || add.isPending) return
    add.mutate(reading.body, {
      onSuccess: () => {
        setTried(false)
        change({ ...EMPTY_CHECK, method: draft.method })
        clear()
        tell({ sentence: say('shelf.check-kept', { name: one.name }, writer) })
      },
    })
  }
  return (
    <section aria-labelledby="add-check">
      <h2 id="add-check">Check it</h2>
      <form onSubmit={keep} noValidate>
        <Choices
          legend="How the truth is known"
          value={draft.method}
          options={METHODS.map((method) => [method, say(`shelf.method.${method}`, {}, writer)] as const)}
          onValue={(method) => change({ method })}
        />
        {refusal !== null ? (
          <p className="note" role="status">
            <Words>{refusal}</Words>
          </p>
        ) : (
          <>
            {cautions.length > 0 && (
              <div className="note">
                {cautions.map((caution) => (
                  <p key={caution}>
                    <Words>{caution}</Words>
                  </p>
                ))}
              </div>
            )}
            <CheckFields draft={draft} change={change} reading={reading} tried={tried} />
            {add.isError && <Trouble fault={add.error} />}
            <div className="row">
              <Button type="submit" look="go" waits={add.isPending}>
                Keep this check
              </Button>
            </div>
          </>
        )}
      </form>
    </section>
  )
}
