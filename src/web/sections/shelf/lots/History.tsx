import { say, writeDay, writeMinuteOfDay } from '../../../../words/index.js'
import { type LotView, type ShelfEntry, useBench, useNames, useWrite } from '../../../shared/api/index.js'
import { takeBack, useShelf } from '../../../shared/desk/index.js'
import { Button, sentenceOf, useTell, useWriter, Words } from '../../../shared/ui/index.js'

/** All that happened to a lot, oldest first. What was wrong is taken back by a further entry; both stay. */
export function History({ view }: { view: LotView }) {
  const writer = useWriter()
  const zone = useBench().data?.zone ?? 'UTC'
  const nameOf = useNames()
  const legsOf = useLegNames()
  const shown = view.history.filter(({ retracts }) => retracts === null)
  return (
    <ol className="told lot-history">
      {shown.map((entry) => {
        const words = say('lot.entry', { told: entry.told as never, legs: legsOf(entry) }, writer)
        const at = Date.parse(entry.at)
        return (
          <li key={entry.id}>
            <p>
              {entry.retracted ? (
                <s>
                  <Words>{words}</Words>
                </s>
              ) : (
                <Words>{words}</Words>
              )}
              {entry.retracted && ` (${say('lot.retracted', {}, writer)})`}
            </p>
            {entry.note !== '' && <p>{entry.note}</p>}
            <p className="small">{`${writeDay(at, zone)}, ${writeMinuteOfDay(at, zone)}, ${nameOf(entry.by)}`}</p>
            {!entry.retracted && <TakeBack entry={entry} words={words} />}
          </li>
        )
      })}
    </ol>
  )
}

/** What each leg of an entry changed, by the name of its container. */
function useLegNames() {
  const shelf = useShelf().data
  const names = new Map<string, string>()
  for (const { id, statement, product } of [...(shelf?.bottles ?? []), ...(shelf?.packages ?? [])])
    names.set(id, statement.name || product)
  for (const { id, name } of shelf?.jugs ?? []) names.set(id, name)
  return ({ legs }: ShelfEntry) =>
    legs.map(({ container_id, unit, change }) => ({
      name: names.get(container_id) ?? 'something that is gone',
      unit,
      change,
    }))
}

function TakeBack({ entry, words }: { entry: ShelfEntry; words: string }) {
  const writer = useWriter()
  const tell = useTell()
  const back = useWrite(() => takeBack(entry.id, {}), 'shelf')
  return (
    <Button
      look="bare"
      aria-label={`Take back: ${words}`}
      waits={back.isPending}
      onClick={() =>
        back.mutate(undefined, {
          onSuccess: () => tell({ sentence: say('lot.taken-back', {}, writer) }),
          onError: (fault) => tell({ sentence: sentenceOf(fault) }),
        })
      }
    >
      Take back
    </Button>
  )
}
