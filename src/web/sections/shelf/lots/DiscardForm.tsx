import { type FormEvent, useState } from 'react'
import { say } from '../../../../words/index.js'
import type { DiscardInput } from '../../../shared/api/index.js'
import { discard, useShelf } from '../../../shared/desk/index.js'
import { go } from '../../../shared/navigation/index.js'
import { Button, ButtonLink, Choices, Trouble, useWriter } from '../../../shared/ui/index.js'
import type { ActProps } from './Acts.js'
import { AmountField, useVolume } from './AmountField.js'
import { usePosting } from './usePosting.js'

/** These hold silver or poison, whatever else is said of them. */
const INTO_JUGS_ONLY = ['fixer', 'toner', 'bleach']

/** A spent bath leaves its bottle: into a jug, or another way where that is allowed; never down a drain from here. */
export function DiscardForm({ one, product }: ActProps) {
  const writer = useWriter()
  const jugs = useShelf().data?.jugs ?? []
  const only = product === undefined || INTO_JUGS_ONLY.includes(product.role)
  const [chosen, setWhere] = useState<string | null>(null)
  const [amount, setAmount] = useState('')
  const reading = useVolume(amount)
  const { post, isPending, fault } = usePosting((asked: DiscardInput) => discard(asked))
  const ways = [
    ...jugs.map(({ id, name }) => [id, say('lot.discard.jug', { name }, writer)] as const),
    ...(only ? [] : [['as-allowed', say('lot.where', { where: 'as-allowed' }, writer)] as const]),
    ['given-away', say('lot.where', { where: 'given-away' }, writer)] as const,
    ['spilt', say('lot.where', { where: 'spilt' }, writer)] as const,
  ]
  const where = ways.find(([way]) => way === chosen)?.[0] ?? ways[0]?.[0] ?? 'spilt'
  const submit = (event: FormEvent) => {
    event.preventDefault()
    if (isPending || (reading !== null && reading.kind !== 'read')) return
    const jug = jugs.find(({ id }) => id === where)
    const way = where as DiscardInput['where']
    post(
      {
        container_id: one.id,
        amount: reading?.kind === 'read' ? reading.value : null,
        ...(jug ? { where: 'jug', jug_id: jug.id } : { where: way }),
      },
      () => say('lot.discarded', { name: one.statement.name }, writer),
      () => go('/shelf'),
    )
  }
  return (
    <form onSubmit={submit} noValidate>
      <p className="note">{say(only ? 'lot.discard.never' : 'lot.discard.codes', {}, writer)}</p>
      {jugs.length === 0 && (
        <p className="row">
          <span>{say('lot.discard.no-jug', {}, writer)}</span>
          <ButtonLink href="/shelf/things/new?kind=jug">Add a jug</ButtonLink>
        </p>
      )}
      <Choices legend={say('lot.discard.where', {}, writer)} value={where} options={ways} onValue={setWhere} />
      <AmountField label="How much" hint={say('lot.amount-hint', {}, writer)} text={amount} onText={setAmount} />
      {fault && <Trouble fault={fault} />}
      <div className="row">
        <Button type="submit" waits={isPending}>
          Book it out
        </Button>
      </div>
    </form>
  )
}
