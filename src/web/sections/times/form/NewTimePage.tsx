import { say } from '../../../../words/index.js'
import { useTimes, useWrite } from '../../../shared/api/index.js'
import { keepTimes } from '../../../shared/desk/index.js'
import { nameOf } from '../../../shared/figures/index.js'
import { go } from '../../../shared/navigation/index.js'
import { ButtonLink, Page, Trouble, useDraft, useTell, useWriter } from '../../../shared/ui/index.js'
import { EMPTY } from './draft.js'
import { namesKept } from './namesKept.js'
import { TimeForm } from './TimeForm.js'

export function NewTimePage() {
  const writer = useWriter()
  const tell = useTell()
  const { draft, change, clear } = useDraft('time-new', EMPTY)
  const keep = useWrite(keepTimes, 'times')
  const names = namesKept(useTimes().data ?? [])
  return (
    <Page
      title="Add a time"
      lead={say('times.form.new', {}, writer)}
      actions={<ButtonLink href="/times/paste">Paste a table instead</ButtonLink>}
    >
      <TimeForm
        draft={draft}
        change={change}
        keepWords="Keep this time"
        waits={keep.isPending}
        {...names}
        onKeep={(statement) =>
          keep.mutate(
            { times: [statement] },
            {
              onSuccess: ({ times: [kept] }) => {
                if (!kept) return
                clear()
                go(`/times/${kept.id}`)
                tell({ sentence: say('times.form.kept', { name: nameOf(kept) }, writer) })
              },
            },
          )
        }
      >
        {keep.isError && <Trouble fault={keep.error} />}
      </TimeForm>
    </Page>
  )
}
