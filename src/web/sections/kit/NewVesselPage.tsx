import { say } from '../../../words/index.js'
import { useWrite, type VesselStatementInput } from '../../shared/api/index.js'
import { keepVessel } from '../../shared/desk/index.js'
import { go } from '../../shared/navigation/index.js'
import { Page, Trouble, useDraft, useTell, useWriter } from '../../shared/ui/index.js'
import { EMPTY_VESSEL } from './readVessel.js'
import { VesselForm } from './VesselForm.js'

export function NewVesselPage() {
  const writer = useWriter()
  const tell = useTell()
  const { draft, change, clear } = useDraft('vessel-new', EMPTY_VESSEL)
  const keep = useWrite((statement: VesselStatementInput) => keepVessel({ statement }), 'vessels')
  return (
    <Page title="Add to the kit">
      <VesselForm
        draft={draft}
        change={change}
        keepWords="Keep it"
        waits={keep.isPending}
        onKeep={(statement) =>
          keep.mutate(statement, {
            onSuccess: () => {
              clear()
              go('/shelf/kit')
              tell({ sentence: say('times.form.kept', { name: statement.name }, writer) })
            },
          })
        }
      >
        {keep.isError && <Trouble fault={keep.error} />}
      </VesselForm>
    </Page>
  )
}
