import { drawnToward } from '../../../science/index.js'
import { type Bath, type Laid, type Recipe, type Room, seriesOf, type TankPlan } from '../../../score/index.js'
import { type Code, say, type Writer } from '../../../words/index.js'
import type { Run, RunSummary } from '../../shared/api/index.js'

/** The name of a step in its list. */
export const stepName = (recipe: Recipe, index: number): string => recipe.steps[index]?.name ?? ''

/** A sentence whose code is put together from data; the catalogue has one for every value. */
export const sayOf = (code: string, params: object, writer: Writer): string =>
  say(code as Code, params as never, writer)

/** What a run is called: its films and its list of baths. */
export function runName({ tanks }: Pick<RunSummary, 'tanks'>, writer: Writer): string {
  const films = [...new Set(tanks.flatMap(({ on_reels }) => on_reels.map(({ film }) => film)))].join(', ')
  const recipe = [...new Set(tanks.map(({ recipe_name }) => recipe_name))].join(', ')
  return say('run.title', { films, recipe }, writer)
}

/** What is in a tank, in as few words as tell it from another: labels, and films of reels without one. */
export const briefLoad = (run: Run, tank: string): string =>
  [...new Set(reelsIn(run, tank).map(({ film, label }) => label || film))].join(', ')

const reelsIn = ({ plan }: Run, tank: string) =>
  plan.tanks.find(({ conditions }) => conditions.tank === tank)?.on_reels ?? []

/** The bath timed by its development, if the list has one. */
export const developingBath = ({ laid }: TankPlan): Laid | null =>
  laid.find(({ step, skipped }) => step.step === 'bath' && !skipped && step.time.law === 'by-developing-time') ?? null

/** What the room takes (below 0) or gives from the pour to the pour-out, by its pull on the bath as it is planned. */
export function pullOf({ temperature, timeConstant }: Room, bath: Laid): number {
  const start = bath.course?.[0]?.temperature ?? temperature
  return drawnToward(temperature, start, timeConstant, bath.clockEnd - bath.in) - start
}

/** The baths whose temperature is worth measuring before the pour: one of each kind, washes as one. */
export function measuredBaths(recipe: Recipe): Bath[] {
  const baths = recipe.steps.filter((step): step is Bath => step.step === 'bath')
  return baths
    .filter(
      (bath, i) => bath.time.law !== 'by-developing-time' && baths.findIndex(({ kind }) => kind === bath.kind) === i,
    )
    .map((bath) => ({ ...bath, name: seriesOf(bath.name) }))
}
