import type { ThermometerRecord, ThermometerStatement } from '../../../../wire/index.js'
import { say } from '../../../../words/index.js'
import { useBench, useThermometers, useWrite } from '../../../shared/api/index.js'
import { correctThermometer, undoThermometer } from '../../../shared/desk/index.js'
import { go } from '../../../shared/navigation/index.js'
import { Asked, ButtonLink, Page, Trouble, useDraft, useTell, useUnits, useWriter } from '../../../shared/ui/index.js'
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
  const tell = useTell()
  const { draft, change, clear } = useDraft(`thermometer-${one.id}-${one.revision}`, draftOf(one, units))
  const back = useWrite((revision: number) => undoThermometer(one.id, { seen_revision: revision }), 'thermometers')
  const correct = useWrite(
    (statement: ThermometerStatement) => correctThermometer(one.id, { seen_revision: one.revision, statement }),
    'thermometers',
  )
  const corrected = (kept: ThermometerRecord) => {
    clear()
    const undo = async () => {
      await back.mutateAsync(kept.revision)
      return say('web.undone', { name: one.name }, writer)
    }
    go(`/shelf/thermometers/${one.id}`)
    tell({ sentence: say('times.form.corrected', { name: kept.name }, writer), undo })
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
