import { writeTemperature } from '../../../../kernel/index.js'
import { boilingPoint } from '../../../../science/index.js'
import { say } from '../../../../words/index.js'
import { Choices, QuantityField, TextField, useUnits, useWriter, Words } from '../../../shared/ui/index.js'
import type { CheckDraft, CheckReading } from './checkDraft.js'

interface CheckFieldsProps {
  readonly draft: CheckDraft
  readonly change: (part: Partial<CheckDraft>) => void
  readonly reading: CheckReading
  readonly tried: boolean
}

/** What is to be read off for the chosen way of checking. */
export function CheckFields({ draft, change, reading, tried }: CheckFieldsProps) {
  const units = useUnits()
  const writer = useWriter()
  const missing = (text: string) => (tried && text.trim() === '' ? say('shelf.missing', {}, writer) : null)
  const compared = draft.method === 'comparison' || draft.method === 'entered'
  return (
    <div className="check-fields">
      <p className="small">
        <Words>{say(`shelf.how.${draft.method}`, {}, writer)}</Words>
      </p>
      <QuantityField
        label="It reads"
        text={draft.read}
        onText={(read) => change({ read })}
        reading={reading.read}
        write={(value) => writeTemperature(value, units)}
        trouble={missing(draft.read)}
        strict={tried}
      />
      {compared && (
        <QuantityField
          label={draft.method === 'comparison' ? 'The trusted one reads' : 'The truth is'}
          text={draft.true}
          onText={(text) => change({ true: text })}
          reading={reading.true}
          write={(value) => writeTemperature(value, units)}
          trouble={missing(draft.true)}
          strict={tried}
        />
      )}
      {draft.method === 'boiling' && <Boiling draft={draft} change={change} reading={reading} tried={tried} />}
    </div>
  )
}

function Boiling({ draft, change, reading, tried }: CheckFieldsProps) {
  const writer = useWriter()
  const byPressure = draft.place === 'pressure'
  const found = byPressure ? reading.pressure : reading.altitude
  const point =
    found?.kind === 'read'
      ? boilingPoint(byPressure ? { pressure_hPa: found.value } : { altitude_m: found.value })
      : null
  const text = byPressure ? draft.pressure : draft.altitude
  const refused = found?.kind === 'refused' ? found.problem.sentence : null
  const missing = tried && text.trim() === '' ? say('shelf.missing', {}, writer) : null
  return (
    <>
      <Choices
        legend="Where the water boils"
        value={draft.place}
        options={[
          ['altitude', 'I know the altitude'],
          ['pressure', 'I have a barometer (its reading there, not the weather report’s)'],
        ]}
        onValue={(place) => change({ place })}
      />
      <TextField
        label={byPressure ? 'Air pressure' : 'Altitude'}
        value={text}
        onText={(typed) => change(byPressure ? { pressure: typed } : { altitude: typed })}
        echo={
          found?.kind === 'read' && point?.ok
            ? say('shelf.boils-at', { read: found.echo, at: point.value }, writer)
            : null
        }
        trouble={refused ?? missing}
      />
    </>
  )
}
