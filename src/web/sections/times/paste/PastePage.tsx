import { say } from '../../../../words/index.js'
import { useWrite } from '../../../shared/api/index.js'
import { keepTimes } from '../../../shared/desk/index.js'
import { nameOf } from '../../../shared/figures/index.js'
import { go } from '../../../shared/navigation/index.js'
import {
  Button,
  Page,
  TextArea,
  TextField,
  Trouble,
  useDraft,
  useTell,
  useWriter,
  Words,
} from '../../../shared/ui/index.js'
import { completed } from './completed.js'
import { ReadBack } from './ReadBack.js'
import { useReading } from './useReading.js'

const EXAMPLE = `Corvane 400    18C   20C   22C   24C
EI 400         11½   9½    8     6¾
EI 800         13½   11¼   9½    8`

/** A table as text, read back in words line by line, corrected in the text, then kept. */
export function PastePage() {
  const writer = useWriter()
  const tell = useTell()
  const { draft, change, clear } = useDraft('times-paste', { text: '', film: '', developer: '' })
  const reading = useReading(draft.text)
  const keep = useWrite(keepTimes, 'times')
  const table = completed(reading.data ?? null, draft)
  const keepAll = () =>
    keep.mutate(
      { times: table.times },
      {
        onSuccess: ({ times }) => {
          clear()
          const first = times[0]
          go(times.length === 1 && first ? `/times/${first.id}` : '/times')
          tell({ sentence: say('times.paste.kept', { count: table.count, records: times.length }, writer) })
        },
      },
    )
  return (
    <Page title="Paste a table" lead={say('times.paste.lead', {}, writer)}>
      <div className="paste">
        <TextArea
          label="The table as text"
          rows={12}
          placeholder={EXAMPLE}
          value={draft.text}
          onText={(text) => change({ text })}
        />
        <div>
          <ReadBack reading={reading} text={draft.text} />
          {table.wants.map((what) => (
            <TextField
              key={what}
              label={what === 'film' ? 'Film' : 'Developer'}
              hint={say('times.paste.missing', { what }, writer)}
              value={draft[what]}
              onText={(text) => change({ [what]: text })}
              maxLength={120}
            />
          ))}
          {table.count > 0 && (
            <div className="paste-keep">
              {table.times.length > 0 && (
                <p className="small">
                  <Words>{table.times.slice(0, 6).map(nameOf).join('; ')}</Words>
                </p>
              )}
              <Button
                look="go"
                onClick={keepAll}
                waits={keep.isPending || reading.isFetching || table.times.length === 0}
              >
                <Words>{say('times.paste.keep', { count: table.count, left: table.left }, writer)}</Words>
              </Button>
            </div>
          )}
          {keep.isError && <Trouble fault={keep.error} />}
        </div>
      </div>
    </Page>
  )
}
