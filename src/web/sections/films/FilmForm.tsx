import { type FormEvent, useState } from 'react'
import { say } from '../../../words/index.js'
import { type FilmRecord, type FilmStatementInput, useWrite } from '../../shared/api/index.js'
import { correctFilm, keepFilm, undoFilm } from '../../shared/desk/index.js'
import {
  Button,
  Choices,
  Select,
  TextArea,
  TextField,
  Trouble,
  useDraft,
  useTell,
  useWriter,
} from '../../shared/ui/index.js'
import { draftOf, EMPTY_FILM, type FilmTroubles, readFilm } from './readFilm.js'

/** What is known of a film, kept for the first time or corrected. */
export function FilmForm({ name, film }: { name: string; film: FilmRecord | null }) {
  const writer = useWriter()
  const tell = useTell()
  const { draft, change, clear } = useDraft(
    `film-${name}-${film?.revision ?? 0}`,
    film === null ? EMPTY_FILM : draftOf(film),
  )
  const [tried, setTried] = useState(false)
  const reading = readFilm(film?.name ?? name, draft, film?.remarks ?? [])
  const troubles: FilmTroubles = tried && reading.statement === null ? reading.troubles : {}
  const back = useWrite((kept: FilmRecord) => undoFilm(kept.id, { seen_revision: kept.revision }), 'films')
  const keep = useWrite(
    (statement: FilmStatementInput) =>
      film === null ? keepFilm(statement) : correctFilm(film.id, { seen_revision: film.revision, statement }),
    'films',
  )
  const onKept = (kept: FilmRecord) => {
    clear()
    const undo = async () => {
      await back.mutateAsync(kept)
      return say('web.undone', { name: kept.name }, writer)
    }
    tell({
      sentence: say(film === null ? 'times.form.kept' : 'times.form.corrected', { name: kept.name }, writer),
      undo,
    })
  }
  const submit = (event: FormEvent) => {
    event.preventDefault()
    setTried(true)
    if (reading.statement !== null && !keep.isPending) keep.mutate(reading.statement, { onSuccess: onKept })
  }
  const hint = say(draft.tolerance === 'percent' ? 'film.percent' : 'film.contrast', {}, writer)
  return (
    <form onSubmit={submit} noValidate className="narrow">
      <Select
        label="Made for"
        value={draft.process}
        options={[
          ['black-and-white', 'black-and-white'],
          ['colour-negative', 'colour negative'],
          ['colour-reversal', 'colour reversal'],
        ]}
        onValue={(process) => change({ process })}
      />
      <Choices
        legend="How far from its time it may be developed"
        value={draft.tolerance}
        options={[
          ['percent', 'in per cent of its time'],
          ['contrast', 'in contrast, by its strips'],
        ]}
        onValue={(tolerance) => change({ tolerance })}
      />
      <div className="form-pair">
        <TextField
          label="Less"
          hint={hint}
          value={draft.down}
          onText={(down) => change({ down })}
          trouble={troubles.down}
          inputMode="decimal"
        />
        <TextField
          label="More"
          hint={hint}
          value={draft.up}
          onText={(up) => change({ up })}
          trouble={troubles.up}
          inputMode="decimal"
        />
      </div>
      {draft.tolerance === 'contrast' && (
        <TextArea
          label="Strips"
          hint={say('film.strips', {}, writer)}
          rows={3}
          value={draft.strips}
          onText={(strips) => change({ strips })}
          trouble={troubles.strips}
          maxLength={2000}
        />
      )}
      <div className="form-pair">
        <Select
          label="In the fixer"
          value={draft.fixing}
          options={[
            ['ordinary', 'as most films'],
            ['fast-using', 'it uses it up faster'],
          ]}
          onValue={(fixing) => change({ fixing })}
        />
        <TextField
          label="Dries in"
          hint={say('film.drying', {}, writer)}
          value={draft.drying}
          onText={(drying) => change({ drying })}
          trouble={troubles.drying}
        />
      </div>
      <TextField
        label="How it keeps"
        value={draft.keeping}
        onText={(keeping) => change({ keeping })}
        maxLength={4000}
      />
      <TextArea
        label="Note"
        className="words"
        rows={2}
        value={draft.note}
        onText={(note) => change({ note })}
        maxLength={4000}
      />
      {keep.isError && <Trouble fault={keep.error} />}
      <div className="row">
        <Button type="submit" look="go" waits={keep.isPending}>
          Keep what I know of it
        </Button>
      </div>
    </form>
  )
}
