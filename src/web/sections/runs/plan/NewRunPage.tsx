import { type FormEvent, useState } from 'react'
import type { Recipe } from '../../../../score/index.js'
import { say } from '../../../../words/index.js'
import {
  planRun,
  type ThermometerRecord,
  type TimeRecord,
  useRecipes,
  useThermometers,
  useTimes,
  useWrite,
} from '../../../shared/api/index.js'
import { useFilms } from '../../../shared/desk/index.js'
import { go } from '../../../shared/navigation/index.js'
import { Button, Page, Reading, Trouble, useDraft, useUnits, useWriter, Words } from '../../../shared/ui/index.js'
import { EMPTY_PLAN, type PlanDraft } from './draft.js'
import { Earlier } from './Earlier.js'
import { PlanFields } from './PlanFields.js'
import { Preview } from './Preview.js'
import { onReels, type PlanReading, readPlan } from './readPlan.js'
import { recipesOf } from './recipes.js'
import { timesFor } from './rolls/load.js'
import { readTogether, type Together } from './together.js'
import { useTanks } from './useTanks.js'
import { WhichTanks } from './WhichTanks.js'

/**
 * What may be chosen has to be there first: it would change under the fingers of someone who types already. While the
 * server does not answer, a plan can still be typed, with the lists that come with the program.
 */
export function NewRunPage() {
  const times = useTimes()
  const recipes = useRecipes()
  const thermometers = useThermometers()
  return (
    <Page title="Plan a run">
      {times.isPending || recipes.isPending || thermometers.isPending ? (
        <Reading />
      ) : (
        <PlanForm
          times={times.data ?? []}
          recipes={recipesOf(recipes.data ?? [])}
          thermometers={thermometers.data ?? []}
        />
      )}
    </Page>
  )
}

interface PlanFormProps {
  readonly times: readonly TimeRecord[]
  readonly recipes: readonly Recipe[]
  readonly thermometers: readonly ThermometerRecord[]
}

/** A plan, worked out anew at every keystroke. */
function PlanForm({ times, recipes, thermometers }: PlanFormProps) {
  const writer = useWriter()
  const units = useUnits()
  const whole = useDraft('run-new', EMPTY_PLAN)
  const tanks = useTanks(whole.draft, whole.change)
  const { draft, change } = tanks
  const [tried, setTried] = useState(false)
  const recipeOf = (one: PlanDraft) => recipes.find(({ id }) => id === one.recipe) ?? (recipes[0] as Recipe)
  const recipe = recipeOf(draft)
  const time = timeOf(times, draft)
  const { film } = draft.load.rolls[0] ?? onReels(draft, time)
  const thermometer = thermometers.find(({ id }) => id === draft.thermometer) ?? null
  const films = useFilms().data ?? []
  const readings = tanks.drafts.map((one) =>
    readPlan({ draft: one, recipe: recipeOf(one), time: timeOf(times, one), thermometer, films, times, units }),
  )
  const reading = readings[tanks.place] as PlanReading
  const together = readTogether(readings)
  const keep = useWrite(planRun, 'runs', 'rolls')
  const make = (event: FormEvent) => {
    event.preventDefault()
    setTried(true)
    if (together.asked === null || keep.isPending) return
    keep.mutate(together.asked, {
      onSuccess: ({ id }) => {
        whole.clear()
        go(`/runs/${id}`)
      },
    })
  }
  return (
    <form className="plan" onSubmit={make} noValidate>
      <div className="plan-fields">
        <WhichTanks tanks={tanks} wanting={tried ? readings.map(({ asked }) => asked === null) : []} />
        <PlanFields
          draft={draft}
          change={change}
          reading={reading}
          tried={tried}
          recipes={recipes}
          recipe={recipe}
          times={times}
          time={time}
          thermometers={thermometers}
          thermometer={thermometer}
        />
      </div>
      <div className="plan-score">
        <Preview
          name={namesOf(tanks.drafts.map(recipeOf))}
          score={together.score}
          place={tanks.place}
          around={reading.around}
        />
        {film.trim() !== '' && <Earlier film={film.trim()} />}
        {keep.isError && <Trouble fault={keep.error} />}
        <div className="row">
          <Button type="submit" look="go" waits={keep.isPending}>
            Keep this plan
          </Button>
        </div>
        <p role="alert" className="form-said">
          {tried && together.asked === null && (
            <Words>{say('times.form.wants', { count: wrongInAll(readings, together) }, writer)}</Words>
          )}
        </p>
      </div>
    </form>
  )
}

/** The kept time that was chosen; the first one until something is, which is one of the rolls where there is one. */
function timeOf(times: readonly TimeRecord[], { from, load }: PlanDraft): TimeRecord | null {
  if (from === 'own') return null
  const [roll] = load.rolls
  const first = roll === undefined ? undefined : timesFor(roll, times)[0]
  return times.find(({ id }) => id === from) ?? first ?? times[0] ?? null
}

const namesOf = (recipes: readonly Recipe[]): string => [...new Set(recipes.map(({ name }) => name))].join(', ')

/** What is wrong with all tanks; at least one thing, since two of them may not go together. */
function wrongInAll(readings: readonly PlanReading[], { score }: Together): number {
  const each = readings.filter(({ asked }) => asked === null).map(wrongIn)
  const apart = each.length === 0 && score?.ok === false ? 1 : 0
  return Math.max(1, apart + each.reduce((sum, count) => sum + count, 0))
}

function wrongIn({ troubles, score, time, temperature, volume, room, weight, temperatures }: PlanReading): number {
  const unread = [time, temperature, volume, room, weight, ...Object.values(temperatures)].filter(
    (one) => one !== null && one.kind !== 'read',
  ).length
  return Math.max(1, Object.keys(troubles).length + unread + (score === null || !score.ok ? 1 : 0))
}
