import { useState } from 'react'
import type { TimeRecord } from '../../../../wire/index.js'
import { say } from '../../../../words/index.js'
import { useTimes } from '../../../shared/api/index.js'
import { nameOf } from '../../../shared/figures/index.js'
import { Asked, ButtonLink, Page, TextField, useWriter, Words } from '../../../shared/ui/index.js'
import { NoTimes } from './NoTimes.js'
import { TimeRow } from './TimeRow.js'

export function TimesPage() {
  const times = useTimes()
  const writer = useWriter()
  const count = times.data?.length ?? 0
  const films = new Set(times.data?.map(({ film }) => film.toLowerCase())).size
  return (
    <Page
      title="Times"
      lead={count > 0 && <Words>{say('times.here', { times: count, films }, writer)}</Words>}
      actions={
        <>
          <ButtonLink href="/times/films">Films</ButtonLink>
          <ButtonLink href="/times/paste">Paste a table</ButtonLink>
          <ButtonLink look="go" href="/times/new">
            Add a time
          </ButtonLink>
        </>
      }
    >
      <Asked query={times}>{(all) => (all.length === 0 ? <NoTimes /> : <Kept times={all} />)}</Asked>
    </Page>
  )
}

/** Found by any word of the film or the developer. */
function Kept({ times }: { times: readonly TimeRecord[] }) {
  const writer = useWriter()
  const [wanted, setWanted] = useState('')
  const words = wanted.toLowerCase().split(/\s+/).filter(Boolean)
  const found = times.filter((time) => words.every((word) => nameOf(time).toLowerCase().includes(word)))
  return (
    <>
      {times.length > 4 && (
        <div className="find">
          <TextField label="Find a film or a developer" type="search" value={wanted} onText={setWanted} />
        </div>
      )}
      <ul className="rows">
        {found.map((time) => (
          <TimeRow key={time.id} time={time} />
        ))}
      </ul>
      <p role="status" className={found.length === 0 ? '' : 'unseen'}>
        <Words>{say('times.found', { count: found.length, wanted }, writer)}</Words>
      </p>
    </>
  )
}
