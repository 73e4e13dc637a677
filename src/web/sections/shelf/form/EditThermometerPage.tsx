import type { ThermometerRecord, ThermometerStatement } from '../../../../wire/index.js'
import { say } from '../../../../words/index.js'
import { useBench, useThermometers, useWrite } from '../../../shared/api/index.js'
import { correctThermometer, useWayBack } from '../../../shared/desk/index.js'
import { go } from '../../../shared/navigation/index.js'
import { Asked, ButtonLink, Page, Trouble, useDraft, useUnits, useWriter } from '../../../shared/ui/index.js'
import { keptThermometer } from '../keptThermometer.js'
import { NotOnShelf } from '../one/ThermometerPage.js'
import { draftOf, ThermometerForm } from './ThermometerForm.js'

export function EditThermometerPage({ params }: { params: Record<string, string> }) {
  const thermometers = useThermometers()
  const bench = useBench()
  return (
    <Asked query={bench}>
      {() => (
        <Asked query={thermometers}>
          {(all) => {
            const one = all.find(({ id }) => id === params.id)
            return one ? <Edit one={one} /> : <NotOnShelf />
          }}
        </Asked>
      )}
    </Asked>
  )
}

function Edit({ one }: { one: ThermometerRecord }) {
  const writer = useWriter()
  const units = useUnits()
  const { draft, change, clear } = useDraft(`thermometer-${one.id}-${one.revision}`, draftOf(one, units))
  const { changed } = useWayBack(keptThermometer(one))
  const correct = useWrite(
    (statement: ThermometerStatement) => correctThermometer(one.id, { seen_revision: one.revision, statement }),
    'thermometers',
  )
  const corrected = (kept: ThermometerRecord) => {
    clear()
    go(`/shelf/thermometers/${one.id}`)
    changed(say('times.form.corrected', { name: kept.name }, writer), kept.revision)
  }
  return (
    <Page
      title={`Correct ${one.name}`}
      lead={say('times.form.edit', {}, writer)}
      actions={<ButtonLink href={`/shelf/thermometers/${one.id}`}>Leave it as it was</ButtonLink>}
    >
      <ThermometerForm
        draft={draft}
        change={change}
        keepWords="Keep the correction"
        waits={correct.isPending}
        onKeep={(statement) => correct.mutate(statement, { onSuccess: corrected })}
      >
        {correct.isError && <Trouble fault={correct.error} />}
      </ThermometerForm>
    </Page>
  )
}
