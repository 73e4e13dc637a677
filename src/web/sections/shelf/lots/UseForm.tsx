import { type FormEvent, useState } from 'react'
import { readNumber } from '../../../../kernel/index.js'
import { readFormat } from '../../../../planning/index.js'
import { say } from '../../../../words/index.js'
import type { UseBathInput } from '../../../shared/api/index.js'
import { useBath as takeUse } from '../../../shared/desk/index.js'
import { Button, Select, TextField, Trouble, useWriter } from '../../../shared/ui/index.js'
import type { ActProps } from './Acts.js'
import { AmountField, useVolume } from './AmountField.js'
import { usePosting } from './usePosting.js'

type Family = NonNullable<NonNullable<UseBathInput['film']>[number]['family']>

const FAMILIES = [
  ['ordinary', 'ordinary grain'],
  ['tabular', 'tabular grain'],
  ['high-iodide', 'high in iodide'],
] as const

const EMPTY = { count: '1', format: '135', poured: '', lost: '' }

/** Film that no run knows of met this bath. */
export function UseForm({ one, product }: ActProps) {
  const writer = useWriter()
  const [draft, setDraft] = useState(EMPTY)
  const [family, setFamily] = useState<Family>('ordinary')
  const [tried, setTried] = useState(false)
  const change = (part: Partial<typeof EMPTY>) => setDraft((now) => ({ ...now, ...part }))
  const gone = product?.use === 'single-use'
  const poured = useVolume(draft.poured)
  const lost = useVolume(draft.lost)
  const cut = readFormat(draft.format.trim())
  const count = readNumber(draft.count.trim()) ?? Number.NaN
  const counted = Number.isInteger(count) && count >= 1 && count <= 10_000
  const { post, isPending, fault } = usePosting((asked: UseBathInput) => takeUse(asked))
  const submit = (event: FormEvent) => {
    event.preventDefault()
    setTried(true)
    if (isPending || !cut.ok || !counted || poured?.kind !== 'read' || (lost !== null && lost.kind !== 'read')) return
    const { format, frames = null, sheets = 1 } = cut.value
    post(
      {
        container_id: one.id,
        lot_id: one.lot_id,
        film: [{ format, frames, count: count * sheets, family }],
        poured: poured.value,
        lost: lost?.kind === 'read' ? lost.value : null,
        back_into: gone ? null : one.id,
      },
      ({ entry }) => say('lot.used', { rolls: entry.told.kind === 'used' ? entry.told.rolls : 0 }, writer),
      () => {
        setDraft(EMPTY)
        setTried(false)
      },
    )
  }
  return (
    <form onSubmit={submit} noValidate>
      <p className="small">{say('lot.use.lead', {}, writer)}</p>
      <div className="form-pair">
        <TextField
          label="How many"
          inputMode="numeric"
          value={draft.count}
          onText={(text) => change({ count: text })}
          trouble={counted ? null : say('lot.use.count', { text: draft.count }, writer)}
        />
        <TextField
          label="Format and length"
          value={draft.format}
          onText={(format) => change({ format })}
          trouble={cut.ok ? null : cut.problem.sentence}
        />
      </div>
      <Select label="Kind of film" value={family} options={FAMILIES} onValue={setFamily} />
      <div className="form-pair">
        <AmountField
          label="Poured out of the bottle"
          text={draft.poured}
          onText={(text) => change({ poured: text })}
          strict={tried}
          trouble={tried && draft.poured.trim() === '' ? say('bottle.missing', {}, writer) : null}
        />
        {gone ? (
          <p className="small">{say('lot.use.gone', {}, writer)}</p>
        ) : (
          <AmountField
            label="Did not come back"
            hint={say('lot.use.lost-hint', {}, writer)}
            text={draft.lost}
            onText={(text) => change({ lost: text })}
          />
        )}
      </div>
      {fault && <Trouble fault={fault} />}
      <div className="row">
        <Button type="submit" waits={isPending}>
          Count it
        </Button>
      </div>
    </form>
  )
}
