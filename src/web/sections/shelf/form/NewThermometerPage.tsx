import { say } from '../../../../words/index.js'
import { useWrite } from '../../../shared/api/index.js'
import { addThermometer } from '../../../shared/desk/index.js'
import { go } from '../../../shared/navigation/index.js'
import { Page, Trouble, useDraft, useTell, useWriter, Words } from '../../../shared/ui/index.js'
import { EMPTY_THERMOMETER, ThermometerForm } from './ThermometerForm.js'

export function NewThermometerPage() {
  const writer = useWriter()
  const tell = useTell()
  const { draft, change, clear } = useDraft('thermometer-new', EMPTY_THERMOMETER)
  const add = useWrite(addThermometer, 'thermometers')
  return (
    <Page title="Add a thermometer" lead={<Words>{say('shelf.new', {}, writer)}</Words>}>
      <ThermometerForm
        draft={draft}
        change={change}
        keepWords="Keep this thermometer"
        waits={add.isPending}
        onKeep={(statement) =>
          add.mutate(statement, {
            onSuccess: (kept) => {
              clear()
              go(`/shelf/thermometers/${kept.id}`)
              tell({ sentence: say('times.form.kept', { name: kept.name }, writer) })
            },
          })
        }
      >
        {add.isError && <Trouble fault={add.error} />}
      </ThermometerForm>
    </Page>
  )
}
