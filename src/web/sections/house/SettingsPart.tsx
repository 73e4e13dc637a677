import { type FormEvent, useState } from 'react'
import { isZone } from '../../../kernel/index.js'
import type { BenchView, Settings } from '../../../wire/index.js'
import { say } from '../../../words/index.js'
import { changeSettings, useWrite } from '../../shared/api/index.js'
import { Button, Choices, TextField, Trouble, useTell, useWriter } from '../../shared/ui/index.js'

export function SettingsPart({ bench }: { bench: BenchView }) {
  const writer = useWriter()
  const tell = useTell()
  const [draft, setDraft] = useState<Settings>({
    name: bench.name,
    units: bench.units,
    paper: bench.paper,
    zone: bench.zone,
  })
  const set = (part: Partial<Settings>) => setDraft((now) => ({ ...now, ...part }))
  const change = useWrite(changeSettings, 'bench')
  const nameTrouble = draft.name.trim() === '' ? say('house.name-missing', {}, writer) : null
  const zoneTrouble = isZone(draft.zone) ? null : say('house.zone-wrong', { zone: draft.zone.slice(0, 60) }, writer)
  const keep = (event: FormEvent) => {
    event.preventDefault()
    if (nameTrouble !== null || zoneTrouble !== null || change.isPending) return
    change.mutate(draft, { onSuccess: () => tell({ sentence: say('house.settings-kept', {}, writer) }) })
  }
  return (
    <section aria-labelledby="settings">
      <h2 id="settings">The bench</h2>
      <form onSubmit={keep} noValidate>
        <TextField
          label="Name of the bench"
          value={draft.name}
          onText={(name) => set({ name })}
          maxLength={120}
          trouble={nameTrouble}
        />
        <Choices
          legend="Units"
          value={draft.units}
          options={[
            ['metric', 'Metric: °C, mL, g'],
            ['us', 'US: °F, fl oz, oz'],
          ]}
          onValue={(units) => set({ units })}
        />
        <Choices
          legend="Paper"
          value={draft.paper}
          options={[
            ['A4', 'A4'],
            ['Letter', 'US Letter'],
          ]}
          onValue={(paper) => set({ paper })}
        />
        <TextField
          label="Time zone"
          hint={say('house.zone-hint', { here: hereZone() }, writer)}
          value={draft.zone}
          onText={(zone) => set({ zone })}
          list="zones"
          trouble={zoneTrouble}
        />
        <datalist id="zones">
          {Intl.supportedValuesOf('timeZone').map((zone) => (
            <option key={zone} value={zone} />
          ))}
        </datalist>
        {change.isError && <Trouble fault={change.error} />}
        <div className="row">
          <Button type="submit" look="go" waits={change.isPending}>
            Keep the settings
          </Button>
        </div>
      </form>
    </section>
  )
}

const hereZone = () => Intl.DateTimeFormat().resolvedOptions().timeZone
