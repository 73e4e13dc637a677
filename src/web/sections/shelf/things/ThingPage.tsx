import { type FormEvent, useState } from 'react'
import { say } from '../../../../words/index.js'
import {
  type ContainerRecord,
  type ContainerStatementInput,
  useTodayHere,
  useWrite,
} from '../../../shared/api/index.js'
import { correctContainer, useProducts, useRemoval, useShelf, useWayBack } from '../../../shared/desk/index.js'
import { go } from '../../../shared/navigation/index.js'
import {
  Asked,
  Button,
  ButtonLink,
  Page,
  Trouble,
  useDraft,
  useUnits,
  useWriter,
  Words,
} from '../../../shared/ui/index.js'
import { draftOf, readThing } from './draft.js'
import { keptThing } from './keptThing.js'
import { ThingFields } from './ThingFields.js'

/** One bottle, package or jug: what is said of it is corrected here; an empty one can go. */
export function ThingPage({ params }: { params: Record<string, string> }) {
  const writer = useWriter()
  return (
    <Asked query={useShelf()}>
      {({ bottles, packages, jugs }) => {
        const all: ContainerRecord[] = [...bottles, ...packages, ...jugs.map(({ record }) => record)]
        const one = all.find(({ id }) => id === params.id)
        return one ? (
          <Correction key={one.revision} one={one} />
        ) : (
          <Page title="Nothing of this name" lead={say('shelf.not-here', {}, writer)}>
            <ButtonLink href="/shelf">To the shelf</ButtonLink>
          </Page>
        )
      }}
    </Asked>
  )
}

function Correction({ one }: { one: ContainerRecord }) {
  const writer = useWriter()
  const units = useUnits()
  const today = useTodayHere()
  const products = useProducts().data ?? []
  const { kind } = one.statement
  const name = useNameOf(one)
  const { draft, change, clear } = useDraft(`thing-${one.id}-${one.revision}`, draftOf(one.statement, units))
  const [tried, setTried] = useState(false)
  const reading = readThing(kind, draft, units, today)
  const correct = useWrite(
    (statement: ContainerStatementInput) => correctContainer(one.id, { seen_revision: one.revision, statement }),
    'shelf',
  )
  const { changed } = useWayBack(keptThing(one, name))
  const submit = (event: FormEvent) => {
    event.preventDefault()
    setTried(true)
    if (reading.statement === null || correct.isPending) return
    correct.mutate(reading.statement, {
      onSuccess: ({ revision }) => {
        clear()
        go('/shelf')
        changed(say('bottle.corrected', { name }, writer), revision)
      },
    })
  }
  return (
    <Page
      title={`Correct ${name}`}
      lead={<Words>{say('bottle.holds', { bottle: name, held: { held: one.held, unit: one.unit } }, writer)}</Words>}
      actions={
        <>
          <ButtonLink href="/shelf">Leave it as it was</ButtonLink>
          {one.held === 0 && <Remove one={one} name={name} />}
        </>
      }
    >
      <form className="narrow" onSubmit={submit} noValidate>
        <ThingFields {...{ kind, draft, change, reading, tried, products }} kept />
        {correct.isError && <Trouble fault={correct.error} />}
        <div className="row">
          <Button type="submit" look="go" waits={correct.isPending}>
            Keep the correction
          </Button>
        </div>
      </form>
    </Page>
  )
}

function useNameOf({ statement }: ContainerRecord): string {
  const products = useProducts().data ?? []
  if (statement.kind !== 'package') return statement.name
  return statement.name || (products.find(({ id }) => id === statement.product_id)?.name ?? 'the package')
}

function Remove({ one, name }: { one: ContainerRecord; name: string }) {
  const { removeIt, waits } = useRemoval(keptThing(one, name))
  return (
    <Button onClick={removeIt} waits={waits}>
      Remove
    </Button>
  )
}
