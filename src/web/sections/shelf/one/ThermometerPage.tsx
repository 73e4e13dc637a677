import { celsius } from '../../../../kernel/index.js'
import type { ThermometerRecord } from '../../../../wire/index.js'
import { say } from '../../../../words/index.js'
import { useThermometers } from '../../../shared/api/index.js'
import { useRemoval } from '../../../shared/desk/index.js'
import { Asked, Button, ButtonLink, Page, useWriter, Words } from '../../../shared/ui/index.js'
import { errorWords } from '../errorWords.js'
import { keptThermometer } from '../keptThermometer.js'
import { kindName } from '../kinds.js'
import { AddCheck } from './AddCheck.js'
import { Checks } from './Checks.js'
import { CorrectionTable } from './CorrectionTable.js'
import { EffectOnTime } from './EffectOnTime.js'

export function ThermometerPage({ params }: { params: Record<string, string> }) {
  const thermometers = useThermometers()
  return (
    <Asked query={thermometers}>
      {(all) => {
        const one = all.find(({ id }) => id === params.id)
        return one ? <Thermometer one={one} /> : <NotOnShelf />
      }}
    </Asked>
  )
}

function Thermometer({ one }: { one: ThermometerRecord }) {
  const writer = useWriter()
  const { removeIt, waits } = useRemoval(keptThermometer(one))
  const scale = { kind: kindName(one.kind), low: celsius(one.scale_low_c), high: celsius(one.scale_high_c) }
  const checked = one.checks.some(({ withdrawn }) => !withdrawn)
  return (
    <Page
      title={one.name}
      lead={<Words>{say('shelf.one', { error: errorWords(one, writer), ...scale }, writer)}</Words>}
      actions={
        <>
          <ButtonLink href={`/shelf/thermometers/${one.id}/edit`}>Correct</ButtonLink>
          <Button onClick={removeIt} waits={waits}>
            Remove
          </Button>
        </>
      }
    >
      <div className="thermometer">
        <div>
          <AddCheck one={one} />
        </div>
        <div>
          <Checks one={one} />
          {checked && <CorrectionTable one={one} />}
          {checked && <EffectOnTime one={one} />}
          {one.note !== '' && <p className="small">{one.note}</p>}
        </div>
      </div>
    </Page>
  )
}

export function NotOnShelf() {
  const writer = useWriter()
  return (
    <Page title="No such thermometer" lead={say('shelf.not-here', {}, writer)}>
      <ButtonLink href="/shelf">To the shelf</ButtonLink>
    </Page>
  )
}
