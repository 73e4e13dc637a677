import './films.css'
import { type Celsius, nameKey, type Seconds } from '../../../kernel/index.js'
import { type Code, say, type Writer, writeDay } from '../../../words/index.js'
import { useBench, useRuns, useTimes } from '../../shared/api/index.js'
import { useFilms } from '../../shared/desk/index.js'
import { developerOf, nameOf } from '../../shared/figures/index.js'
import { Link } from '../../shared/navigation/index.js'
import { Asked, ButtonLink, Page, useWriter, Words } from '../../shared/ui/index.js'
import { FilmForm } from './FilmForm.js'
import { bestOf, tanksOf, type Worked } from './worked.js'

const LAST = 50

/** One film: what worked, its times, and what is kept of it. */
export function FilmPage({ params }: { params: Record<string, string> }) {
  const films = useFilms()
  const writer = useWriter()
  const asked = params['name'] ?? ''
  return (
    <Asked query={films}>
      {(all) => {
        const film = all.find(({ name }) => nameKey(name) === nameKey(asked)) ?? null
        const name = film?.name ?? asked
        return (
          <Page
            title={name}
            lead={say('film.lead', { kept: film !== null }, writer)}
            actions={<ButtonLink href="/times/films">All films</ButtonLink>}
          >
            <div className="film">
              <WhatWorked film={name} />
              <ItsTimes film={name} />
              <section aria-labelledby="known">
                <h2 id="known">What I know of it</h2>
                <FilmForm key={`${name} ${film?.revision ?? 0}`} name={name} film={film} />
              </section>
            </div>
          </Page>
        )
      }}
    </Asked>
  )
}

/** What was done with it, newest first; the best is marked. */
function WhatWorked({ film }: { film: string }) {
  const writer = useWriter()
  const runs = useRuns({ film, ended: 'true', practice: 'false', limit: LAST })
  return (
    <section aria-labelledby="worked">
      <h2 id="worked">What I did last time</h2>
      <Asked query={runs}>
        {(found) => {
          const worked = tanksOf(found.runs, film)
          const best = bestOf(worked)
          if (worked.length === 0) return <p className="quiet">{say('film.no-runs', {}, writer)}</p>
          return (
            <ul className="rows">
              {worked.map((one) => (
                <WorkedRow key={`${one.run.id} ${one.tank.tank}`} worked={one} best={one === best} />
              ))}
            </ul>
          )
        }}
      </Asked>
    </section>
  )
}

function WorkedRow({ worked: { run, tank, verdict }, best }: { worked: Worked; best: boolean }) {
  const writer = useWriter()
  const zone = useBench().data?.zone ?? 'UTC'
  const facts = {
    developer: tank.developer,
    temperature: tank.temperature_c as Celsius | null,
    time: tank.time_s as Seconds | null,
    verdict: verdict === null ? '' : verdictWords(verdict, writer),
  }
  return (
    <li>
      <Link className="row-link" href={`/runs/${run.id}/record`}>
        <span>
          <Words>{say('film.run', facts, writer)}</Words>
        </span>
        <span className="row-figure">{writeDay(Date.parse(run.started_at ?? run.planned_at), zone)}</span>
        {best && (
          <strong className="small row-more">
            <Words>{say('film.best', {}, writer)}</Words>
          </strong>
        )}
      </Link>
    </li>
  )
}

/** The catalogue has a word for every density and every mark. */
function verdictWords({ density, marks }: NonNullable<Worked['verdict']>, writer: Writer): string {
  const codes = [...(density === null ? [] : [`run.verdict.${density}`]), ...marks.map((mark) => `run.mark.${mark}`)]
  return codes.map((code) => say(code as Code, {} as never, writer)).join(', ')
}

function ItsTimes({ film }: { film: string }) {
  const writer = useWriter()
  const times = useTimes()
  return (
    <section aria-labelledby="its-times">
      <h2 id="its-times">Its times</h2>
      <Asked query={times}>
        {(all) => {
          const own = all.filter((time) => nameKey(time.film) === nameKey(film))
          if (own.length === 0) return <p className="quiet">{say('film.no-times', {}, writer)}</p>
          return (
            <ul className="rows">
              {own.map((time) => (
                <li key={time.id}>
                  <Link className="row-link" href={`/times/${time.id}`} aria-label={nameOf(time)}>
                    <span>{developerOf(time)}</span>
                    <span className="row-figure">{time.exposure_index !== null && `at ${time.exposure_index}`}</span>
                  </Link>
                </li>
              ))}
            </ul>
          )
        }}
      </Asked>
    </section>
  )
}
