import type { Problem } from '../../../../kernel/index.js'
import { say } from '../../../../words/index.js'
import type { OrderRecord } from '../../../shared/api/index.js'
import { Select, TextArea, TextField, useWriter } from '../../../shared/ui/index.js'
import type { OrderDraft } from './order.js'

interface OrderFieldsProps {
  readonly person: string
  readonly draft: OrderDraft
  readonly change: (part: Partial<OrderDraft>) => void
  /** Orders of this person that are open. */
  readonly open: readonly OrderRecord[]
  /** What is wrong with the order, and with which of its fields. */
  readonly trouble: Problem | null
  /** How many of the rolls are on the list that is taken in at once. */
  readonly listed?: number
}

/** What belongs to film of somebody else: the count, how to reach them, the deposit and what was agreed. */
export function OrderFields({ person, draft, change, open, listed, trouble }: OrderFieldsProps) {
  const writer = useWriter()
  const order = open.find(({ id }) => id === draft.id)
  return (
    <fieldset className="order-fields">
      <legend>{`Order of ${person}`}</legend>
      {open.length > 0 && (
        <Select
          label={`The film of ${person} belongs to`}
          value={order?.id ?? ''}
          options={[
            ['', 'a new order'],
            ...open.map(
              (one) =>
                [
                  one.id,
                  say('rolls.form.order', { person, listed: one.rolls.length, counted: one.counted_in }, writer),
                ] as const,
            ),
          ]}
          onValue={(id) => change({ id })}
        />
      )}
      {!order && (
        <>
          <TextField
            label={`Rolls of ${person} counted`}
            hint={
              listed === undefined
                ? 'All that were handed over, not only this one.'
                : say('rolls.many.counted', { person, listed }, writer)
            }
            value={draft.counted}
            onText={(counted) => change({ counted })}
            inputMode="numeric"
            trouble={trouble?.field === 'counted' ? trouble.sentence : null}
          />
          <TextField
            label={`Film of ${person} due by`}
            hint="Such as in 2 weeks. A roll of which another day is said keeps that."
            value={draft.due}
            onText={(due) => change({ due })}
            trouble={trouble?.field === 'due' ? trouble.sentence : null}
          />
          <details>
            <summary>Contact, deposit, what was agreed</summary>
            <div className="form-pair">
              <TextField
                label="Contact"
                hint="Such as a telephone number."
                value={draft.contact}
                onText={(contact) => change({ contact })}
                maxLength={200}
              />
              <TextField
                label="Deposit"
                hint="Such as 10 in cash."
                value={draft.deposit}
                onText={(deposit) => change({ deposit })}
                maxLength={60}
              />
            </div>
            <TextArea
              label="Agreed in case of loss"
              className="words"
              rows={2}
              value={draft.agreed}
              onText={(agreed) => change({ agreed })}
              maxLength={4000}
            />
          </details>
        </>
      )}
    </fieldset>
  )
}
