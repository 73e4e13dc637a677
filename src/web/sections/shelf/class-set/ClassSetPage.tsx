import { type FormEvent, useState } from 'react'
import type { ClassSetResult, ThermometerRecord } from '../../../../wire/index.js'
import { say } from '../../../../words/index.js'
import { useThermometers, useWrite } from '../../../shared/api/index.js'
import { addClassSet } from '../../../shared/desk/index.js'
import {
  Asked,
  Button,
  ButtonLink,
  Page,
  Select,
  Trouble,
  useDraft,
  useUnits,
  useWriter,
  Words,
} from '../../../shared/ui/index.js'
import { SetResults } from './SetResults.js'
import { SetRow } from './SetRow.js'
import { EMPTY_SET, readSet } from './setDraft.js'

/** Several thermometers in one beaker, entered once: an offset for each. */
export function ClassSetPage() {
  const thermometers = useThermometers()
  const writer = useWriter()
  const [result, setResult] = useState<ClassSetResult | null>(null)
  return (
    <Page
      title="Compare several thermometers"
      lead={<Words>{say('class-set.lead', {}, writer)}</Words>}
      actions={<ButtonLink href="/shelf">To the shelf</ButtonLink>}
    >
      <Asked query={thermometers}>
        {(all) =>
          result ? (
            <SetResults result={result} all={all} again={() => setResult(null)} />
          ) : all.length < 2 ? (
            <TooFew />
          ) : (
            <SetForm all={all} onKept={setResult} />
          )
        }
      </Asked>
    </Page>
  )
}

function TooFew() {
  const writer = useWriter()
  return (
    <p className="row">
      <span>{say('class-set.too-few', {}, writer)}</span>
      <ButtonLink href="/shelf/thermometers/new">Add a thermometer</ButtonLink>
    </p>
  )
}

function SetForm({ all, onKept }: { all: readonly ThermometerRecord[]; onKept: (result: ClassSetResult) => void }) {
  const writer = useWriter()
  const units = useUnits()
  const [tried, setTried] = useState(false)
  const { draft, change, clear } = useDraft('class-set', EMPTY_SET)
  const add = useWrite(addClassSet, 'thermometers')
  const set = readSet(draft, all, units)
  const keep = (event: FormEvent) => {
    event.preventDefault()
    setTried(true)
    if (!set.body || add.isPending) return
    add.mutate(set.body, {
      onSuccess: (result) => {
        clear()
        onKept(result)
      },
    })
  }
  return (
    <form onSubmit={keep} noValidate className="narrow">
      <Select
        label="Which one is trusted?"
        hint={say('class-set.trusted-hint', {}, writer)}
        value={draft.trusted}
        options={[['', 'none of them'], ...all.map(({ id, name }) => [id, name] as const)]}
        onValue={(trusted) => change({ trusted })}
      />
      <fieldset className="points">
        <legend>What each one reads</legend>
        {all.map((one) => (
          <SetRow
            key={one.id}
            one={one}
            text={draft.readings[one.id] ?? ''}
            reading={set.readings[one.id] ?? null}
            strict={tried}
            onText={(text) => change({ readings: { ...draft.readings, [one.id]: text } })}
          />
        ))}
      </fieldset>
      {tried && set.trouble && (
        <p className="trouble" role="alert">
          <Words>{set.trouble}</Words>
        </p>
      )}
      {add.isError && <Trouble fault={add.error} />}
      <div className="row">
        <Button type="submit" look="go" waits={add.isPending}>
          Keep a check for each
        </Button>
      </div>
    </form>
  )
}
