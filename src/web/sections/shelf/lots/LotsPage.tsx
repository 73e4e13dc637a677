import { useEffect, useState } from 'react'
import { writeRatio } from '../../../../kernel/index.js'
import { say, writeDay } from '../../../../words/index.js'
import { type LotHeads, useBench, useNames } from '../../../shared/api/index.js'
import { useLots } from '../../../shared/desk/index.js'
import { go, Link, usePlace } from '../../../shared/navigation/index.js'
import { Asked, ButtonLink, Page, TextField, useWriter, Words } from '../../../shared/ui/index.js'
import { ShelfNav } from '../ShelfNav.js'

const ON_A_PAGE = 50
/** How long the typing rests before the list is asked for anew. */
const REST_MS = 250

const addressOf = (words: string, after: string | null): string => {
  const search = new URLSearchParams({ ...(words === '' ? {} : { words }), ...(after === null ? {} : { after }) })
  return search.size === 0 ? '/shelf/lots' : `/shelf/lots?${search}`
}

/** Every lot that was ever mixed, newest first, a page at a time. */
export function LotsPage() {
  const writer = useWriter()
  const { search } = usePlace()
  const words = search.get('words') ?? ''
  const after = search.get('after')
  const lots = useLots({ words, after, most: ON_A_PAGE })
  const { data } = lots
  return (
    <Page
      title="Lots of all times"
      lead={
        data && data.found > 0 ? say('lot.found', { shown: data.lots.length, found: data.found }, writer) : undefined
      }
    >
      <ShelfNav />
      <Find words={words} />
      <Asked query={lots}>{(found) => <Found found={found} words={words} after={after} />}</Asked>
    </Page>
  )
}

function Find({ words }: { words: string }) {
  const [typed, setTyped] = useState(words)
  useEffect(() => {
    if (typed === words) return
    const change = setTimeout(() => go(addressOf(typed, null), { replace: true }), REST_MS)
    return () => clearTimeout(change)
  }, [typed, words])
  return (
    <search className="lots-find">
      <TextField
        label="Find"
        hint="A code such as 26-007, a product, or a word of the note."
        type="search"
        value={typed}
        onText={setTyped}
        maxLength={200}
      />
    </search>
  )
}

function Found({ found, words, after }: { found: LotHeads; words: string; after: string | null }) {
  const writer = useWriter()
  const zone = useBench().data?.zone ?? 'UTC'
  const nameOf = useNames()
  if (found.lots.length === 0)
    return <p role="status">{say(words === '' ? 'lot.none' : 'lot.none-found', {}, writer)}</p>
  return (
    <>
      <ul className="rows">
        {found.lots.map((lot) => (
          <li key={lot.id}>
            <Link className="row-link" href={`/shelf/lots/${lot.id}`}>
              <span>
                <span className="quiet">{lot.code}</span>{' '}
                <strong>{lot.parts ? `${lot.product} ${writeRatio({ parts: lot.parts })}` : lot.product}</strong>
              </span>
              <span className="row-figure small">{lot.role}</span>
              <span className="small row-more">
                <Words>
                  {say(
                    'lot.row',
                    { day: writeDay(Date.parse(lot.mixed_at), zone), by: nameOf(lot.mixed_by), volume: lot.mixed_ml },
                    writer,
                  )}
                </Words>
              </span>
            </Link>
          </li>
        ))}
      </ul>
      <nav className="row more" aria-label="Pages of the list">
        {after !== null && <ButtonLink href={addressOf(words, null)}>To the newest</ButtonLink>}
        {found.next !== null && <ButtonLink href={addressOf(words, found.next)}>Earlier lots</ButtonLink>}
      </nav>
    </>
  )
}
