import { type FormEvent, useState } from 'react'
import { compareNames, nameKey } from '../../../kernel/index.js'
import { say } from '../../../words/index.js'
import { type FilmRecord, useTimes } from '../../shared/api/index.js'
import { useFilms } from '../../shared/desk/index.js'
import { go, Link } from '../../shared/navigation/index.js'
import { Asked, Button, ButtonLink, Page, TextField, useWriter, Words } from '../../shared/ui/index.js'

const placeOf = (name: string): string => `/times/films/${encodeURIComponent(name)}`

/** Every film that is kept, or that a time is kept of. */
export function FilmsPage() {
  const films = useFilms()
  const times = useTimes()
  const writer = useWriter()
  const names = namesOf(films.data ?? [], times.data?.map(({ film }) => film) ?? [])
  return (
    <Page
      title="Films"
      lead={<Words>{say('films.lead', { kept: films.data?.length ?? 0, count: names.length }, writer)}</Words>}
      actions={<ButtonLink href="/times">Times</ButtonLink>}
    >
      <Asked query={films}>
        {(kept) => (
          <>
            {names.length === 0 && (
              <p className="lead">
                <strong>{say('films.none', {}, writer)}</strong> {say('films.none.why', {}, writer)}
              </p>
            )}
            <ul className="rows">
              {names.map((name) => (
                <FilmRow
                  key={name}
                  name={name}
                  film={kept.find((one) => nameKey(one.name) === nameKey(name)) ?? null}
                />
              ))}
            </ul>
            <Another />
          </>
        )}
      </Asked>
    </Page>
  )
}

/** Each name once, whatever its capitals; as it is kept where it is kept. */
function namesOf(kept: readonly FilmRecord[], timed: readonly string[]): string[] {
  const names = new Map<string, string>()
  for (const name of [...kept.map((film) => film.name), ...timed])
    if (!names.has(nameKey(name))) names.set(nameKey(name), name)
  return [...names.values()].sort(compareNames)
}

function FilmRow({ name, film }: { name: string; film: FilmRecord | null }) {
  const writer = useWriter()
  return (
    <li>
      <Link className="row-link" href={placeOf(name)}>
        <strong>{name}</strong>
        <span className="small row-more">
          <Words>
            {film === null ? say('films.unkept', {}, writer) : say('films.tolerance', film.tolerance, writer)}
          </Words>
        </span>
      </Link>
    </li>
  )
}

function Another() {
  const [name, setName] = useState('')
  const open = (event: FormEvent) => {
    event.preventDefault()
    if (name.trim() !== '') go(placeOf(name.trim()))
  }
  return (
    <form className="row find" onSubmit={open}>
      <TextField label="Another film" value={name} onText={setName} maxLength={120} />
      <Button type="submit">Open it</Button>
    </form>
  )
}
