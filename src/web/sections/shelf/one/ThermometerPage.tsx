import { celsius } from '../../../../kernel/index.js'
import type { ThermometerRecord } from '../../../../wire/index.js'
import { say } from '../../../../words/index.js'
import { useThermometers, useWrite } from '../../../shared/api/index.js'
import { removeThermometer, undoThermometer } from '../../../shared/desk/index.js'
import { go } from '../../../shared/navigation/index.js'
import { Asked, Button, ButtonLink, Page, sentenceOf, useTell, useWriter, Words } from '../../../shared/ui/index.js'
import { errorWords } from '../errorWords.js'
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
  const { removeIt, waits } = useThermometerRemoval(one)
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

function useThermometerRemoval(one: ThermometerRecord) {
  const writer = useWriter()
  const tell = useTell()
  const back = useWrite((revision: number) => undoThermometer(one.id, { seen_revision: revision }), 'thermometers')
  const remove = useWrite(() => removeThermometer(one.id, { seen_revision: one.revision }), 'thermometers')
  const removeIt = () =>
    remove.mutate(undefined, {
      onSuccess: (removed) => {
        go('/shelf')
        const undo = async () => {
          await back.mutateAsync(removed.revision)
          return say('web.brought-back', { name: one.name }, writer)
        }
        tell({ sentence: say('web.removed', { name: one.name }, writer), undo })
      },
      onError: (fault) => tell({ sentence: sentenceOf(fault) }),
    })
  return { removeIt, waits: remove.isPending }
}
