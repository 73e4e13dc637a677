import type { TimeRecord } from '../../../../wire/index.js'
import { say } from '../../../../words/index.js'
import { useBench, useTime, useTimes, useWrite } from '../../../shared/api/index.js'
import { correctTime, useWayBack } from '../../../shared/desk/index.js'
import { nameOf } from '../../../shared/figures/index.js'
import { go } from '../../../shared/navigation/index.js'
import { Asked, ButtonLink, Page, Trouble, useDraft, useUnits, useWriter } from '../../../shared/ui/index.js'
import { keptTime } from '../keptTime.js'
import { RemovedTime } from '../RemovedTime.js'
import { draftOf } from './draft.js'
import { namesKept } from './namesKept.js'
import { TimeForm } from './TimeForm.js'

export function EditTimePage({ params }: { params: Record<string, string> }) {
  const time = useTime(params.id ?? '')
  const bench = useBench()
  // The draft is written in the bench's units, so these have to be known first.
  return (
    <Asked query={bench}>
      {() => (
        <Asked query={time}>
          {(record) => (record.removed ? <RemovedTime record={record} /> : <Edit key={record.id} record={record} />)}
        </Asked>
      )}
    </Asked>
  )
}

function Edit({ record }: { record: TimeRecord }) {
  const writer = useWriter()
  const units = useUnits()
  const { draft, change, clear } = useDraft(`time-${record.id}-${record.revision}`, draftOf(record, units))
  const names = namesKept(useTimes().data ?? [])
  const correct = useWrite(
    (statement: Parameters<typeof correctTime>[1]['statement']) =>
      correctTime(record.id, { seen_revision: record.revision, statement }),
    'times',
  )
  const { changed } = useWayBack(keptTime(record))
  const corrected = (kept: TimeRecord) => {
    clear()
    go(`/times/${kept.id}`)
    changed(say('times.form.corrected', { name: nameOf(kept) }, writer), kept.revision)
  }
  return (
    <Page
      title={`Correct ${nameOf(record)}`}
      lead={say('times.form.edit', {}, writer)}
      actions={<ButtonLink href={`/times/${record.id}`}>Leave it as it was</ButtonLink>}
    >
      <TimeForm
        draft={draft}
        change={change}
        keepWords="Keep the correction"
        waits={correct.isPending}
        {...names}
        onKeep={(statement) => correct.mutate(statement, { onSuccess: corrected })}
      >
        {correct.isError && <Trouble fault={correct.error} />}
      </TimeForm>
    </Page>
  )
}
