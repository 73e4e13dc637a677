import { type FormEvent, useCallback, useMemo, useState } from 'react'
import { fold, isFromPaper, type RunEvent, type Score } from '../../../../score/index.js'
import { say, writeDay } from '../../../../words/index.js'
import { ApiProblem, type Run, useBench, useRun, useWrite } from '../../../shared/api/index.js'
import { go } from '../../../shared/navigation/index.js'
import { deviceClock } from '../../../shared/platform/index.js'
import {
  Asked,
  Button,
  ButtonLink,
  Page,
  TextField,
  Trouble,
  useDraft,
  useTell,
  useUnits,
  useWriter,
  Words,
} from '../../../shared/ui/index.js'
import { eventOf, scoreOf } from '../engine/shapes.js'
import { Becomes } from './Becomes.js'
import { Remarks, Temperatures } from './Beside.js'
import { EMPTY_ROW, EMPTY_TANK, emptySheet, freshEntry, type PaperDraft, rowKey, typedBefore } from './draft.js'
import { MomentField } from './MomentField.js'
import { readDraft } from './readDraft.js'
import { SheetRows } from './SheetRows.js'
import { entryEvents, sendEvents, takeBack } from './sending.js'
import type { SheetForm } from './sheetForm.js'
import { WentWrong } from './WentWrong.js'

/** A bench sheet that is typed in, row by row. */
export function PaperPage({ params }: { params: Record<string, string> }) {
  const run = useRun(params['id'] ?? '')
  return <Asked query={run}>{(found) => <Scored run={found} again={() => void run.refetch()} />}</Asked>
}

function Scored({ run, again }: { run: Run; again: () => void }) {
  const writer = useWriter()
  const zone = useBench().data?.zone
  const score = scoreOf(run)
  const events = run.events.map(eventOf)
  const typed = events.some(isFromPaper)
  const title = say(typed ? 'paper.correct' : 'paper.title', {}, writer)
  const films = [...new Set(run.plan.tanks.flatMap(({ on_reels }) => on_reels.map(({ film }) => film)))].join(', ')
  const recipe = [...new Set(run.plan.tanks.map((tank) => tank.recipe.name))].join(', ')
  const followed = run.ended_at !== null && !typed
  return (
    <Page title={title} lead={<Words>{say('run.title', { films, recipe }, writer)}</Words>}>
      {followed || !score.ok ? (
        <div className="note">
          <p>{score.ok ? say('paper.followed', {}, writer) : score.problem.sentence}</p>
          <ButtonLink href={`/runs/${run.id}/record`}>Read the record</ButtonLink>
        </div>
      ) : (
        zone !== undefined && <Sheet run={run} score={score.value} events={events} zone={zone} again={again} />
      )}
    </Page>
  )
}

interface SheetProps {
  readonly run: Run
  readonly score: Score
  readonly events: readonly RunEvent[]
  readonly zone: string
  readonly again: () => void
}

/** Read anew at every keystroke. */
function Sheet({ run, score, events, zone, again }: SheetProps) {
  const writer = useWriter()
  const form = useSheet(run, score, events, zone)
  const { draft, reading, change, tried } = form
  const keeping = useKeeping({ run, score, events, zone, again }, form)
  const typed = events.some(isFromPaper)
  return (
    <form className="paper" onSubmit={keeping.keep} noValidate>
      <div className="paper-sheet">
        <p>{say(typed ? 'paper.correct.how' : 'paper.how', {}, writer)}</p>
        <div className="sheet-boxes">
          <TextField
            label="Day"
            type="date"
            hint={say('paper.day-hint', {}, writer)}
            echo={`read as ${form.day}`}
            value={draft.day}
            onText={(day) => change({ day })}
          />
          <MomentField
            label="Zero by the clock"
            hint={say('paper.zero-hint', {}, writer)}
            text={draft.zero}
            onText={(zero) => change({ zero })}
            boxed={reading.times['zero']}
            day={form.day}
            zone={zone}
            strict={tried}
          />
        </div>
        <SheetRows form={form} />
        {score.tanks.map(({ tank }) => (
          <div key={tank.tank} className="paper-sheet">
            <Temperatures form={form} tank={tank.tank} />
            <WentWrong form={form} tank={tank.tank} />
            <Remarks form={form} tank={tank.tank} />
          </div>
        ))}
      </div>
      <div className="paper-becomes">
        <Becomes score={score} known={form.known} reading={reading} zone={zone} />
        {keeping.fault !== null && <Trouble fault={keeping.fault} />}
        <div className="row">
          <Button type="submit" look="go" waits={keeping.waits}>
            Put it on record
          </Button>
        </div>
        <p role="alert" className="form-said">
          {tried && reading.wrong > 0 && <Words>{say('paper.wants', { count: reading.wrong }, writer)}</Words>}
        </p>
      </div>
    </form>
  )
}

interface Sheeted extends SheetForm {
  readonly known: readonly RunEvent[]
  readonly setTried: (tried: boolean) => void
  readonly clear: () => void
}

function useSheet(run: Run, score: Score, events: readonly RunEvent[], zone: string): Sheeted {
  const system = useUnits()
  const units = { system, off: run.plan.thermometer?.off_c ?? 0 }
  const [began] = useState<PaperDraft>(() => typedBefore(score, events, zone, units) ?? emptySheet(zone))
  const { draft, change, clear } = useDraft(`run-paper-${run.id}`, began)
  const [tried, setTried] = useState(false)
  const known = useMemo(() => events.filter((event) => !isFromPaper(event)), [events])
  const byScreen = useMemo(() => fold(score, known).tanks, [score, known])
  const reading = readDraft({ draft, score, units, zone, now: deviceClock.wall(), known })
  const changeRow = useCallback<SheetForm['changeRow']>(
    (tank, step, part) => {
      const key = rowKey(tank, step)
      change({ rows: { ...draft.rows, [key]: { ...EMPTY_ROW, ...draft.rows[key], ...part } } })
    },
    [draft, change],
  )
  const changeTank = useCallback<SheetForm['changeTank']>(
    (tank, part) => change({ tanks: { ...draft.tanks, [tank]: { ...EMPTY_TANK, ...draft.tanks[tank], ...part } } }),
    [draft, change],
  )
  const day = dayShown(draft.day, zone)
  return {
    score,
    draft,
    reading,
    units,
    day,
    zone,
    tried,
    byScreen,
    change,
    changeRow,
    changeTank,
    known,
    setTried,
    clear,
  }
}

/** Noon, so that it is the same day wherever the bench is within half a day of UTC. */
const dayShown = (day: string, zone: string): string => {
  const noon = Date.parse(`${day}T12:00:00Z`)
  return Number.isNaN(noon) ? '' : writeDay(noon, zone)
}

function useKeeping({ run, score, events, again }: SheetProps, { draft, reading, change, clear, setTried }: Sheeted) {
  const writer = useWriter()
  const tell = useTell()
  const actor = useBench().data?.role ?? 'owner'
  const send = useWrite((sent: readonly RunEvent[]) => sendEvents(run.id, sent), 'runs')
  const undo = useWrite((sent: readonly RunEvent[]) => {
    return takeBack(run.id, sent, { entry: freshEntry(), now: Math.round(deviceClock.wall()), actor })
  }, 'runs')
  const keep = (event: FormEvent) => {
    event.preventDefault()
    setTried(true)
    if (reading.wrong > 0 || send.isPending) return
    const now = draft.typedAt ?? Math.round(deviceClock.wall())
    change({ typedAt: now })
    const sent = entryEvents(score, events, reading.sheet.happened, { entry: draft.entry, now, actor })
    send.mutate(sent, {
      onSuccess: () => {
        clear()
        go(`/runs/${run.id}/record`)
        const takenBack = say('paper.taken-back', {}, writer)
        tell({ sentence: say('paper.kept', {}, writer), undo: () => undo.mutateAsync(sent).then(() => takenBack) })
      },
      // The first sending did arrive and the sheet was changed since: what follows is a correction of it.
      onError: (fault) => {
        if (!(fault instanceof ApiProblem) || fault.body.code !== 'run.event-differs') return
        change({ entry: freshEntry(), typedAt: null })
        again()
      },
    })
  }
  return { keep, waits: send.isPending, fault: send.error }
}
