import { expectOk, seconds } from '../../../src/kernel/index.js'
import { pushFactor } from '../../../src/science/index.js'
import { type Agitation, type Bath, isBath, plan, type Recipe, SHIPPED_RECIPES } from '../../../src/score/index.js'
import data from '../data/tank-practice.json' with { type: 'json' }
import { type Check, differences } from './check.js'

const { tolerance, pour, tap, opening, afterwards, drain, fixer, stop, lid, washAid, wetting, fixing, push } = data
const exact = tolerance.exact

const list = (id: string) => SHIPPED_RECIPES.find((one) => one.id === id) as Recipe
const threeBaths = list('three-bath-acid-stop')
const step = (recipe: Recipe, id: string) => recipe.steps.find((one) => one.id === id)
const bathIn = (recipe: Recipe, id: string) => step(recipe, id) as Bath
const developer = bathIn(threeBaths, 'developer')

/** A list planned with a developing time of one’s own. */
function planned(recipe: Recipe, time: number | null, clearing: number | null = null) {
  const development = time === null ? null : ({ from: 'own', time: seconds(time), temperature: null } as const)
  const conditions = { tank: 'A', development, clearing: clearing === null ? null : seconds(clearing) }
  const [tank] = expectOk(plan([{ recipe, conditions }])).tanks
  if (tank === undefined) throw new Error('A score has a tank.')
  return tank
}

const lengthOf = (turn: { by: string; seconds?: number } | null) => turn?.seconds ?? Number.NaN
const turnsOf = (agitation: Agitation) => (agitation.kind === 'turns' ? agitation : null)
const fixedTime = ({ time }: Bath) => (time.law === 'fixed' ? time.seconds : Number.NaN)
const outside = (value: number, { least_s, most_s }: { least_s: number; most_s: number }) =>
  Math.max(0, least_s - value, value - most_s)
const broken = (rule: boolean) => (rule ? 0 : 1)

/** The developer of three baths with turns so often, planned for so long: marks by its own clock. */
function marksOf(time: number, every: number) {
  const steps = threeBaths.steps.map((one) =>
    one.id === 'developer'
      ? { ...developer, agitation: { ...turnsOf(developer.agitation), every: seconds(every) } as Agitation }
      : one,
  )
  const { baths, jobs } = planned({ ...threeBaths, steps }, time)
  const start = baths[0]?.clockStart ?? Number.NaN
  const marks = jobs.filter(({ kind, index }) => kind === 'turn' && index === 0).map((job) => job.start - start)
  return { marks, drains: [(baths[0]?.drainStart ?? 0) - start, (baths[0]?.drainEnd ?? 0) - start] }
}

/** The published count, for pourings-out that a whole last turn fits before. */
function miscounted(every: number): number[] {
  const errors: number[] = []
  for (let out = data.counted.from_s; out < data.counted.to_s; out += data.counted.each_s) {
    if ((out - 60) % every < afterwards.seconds) continue
    const published = Math.floor((out - 60) / every) + 1
    errors.push(Math.abs(marksOf(out + drain.seconds, every).marks.length - published))
  }
  return errors
}

const aTank: readonly Check[] = [
  {
    rows: pour.rows,
    says: 'a small tank is poured in 10–20 s, and its clock starts when it is full',
    tolerance: exact,
    errors: () => {
      const { tank, baths } = planned(threeBaths, 480)
      const filled = baths[0]?.clockStart ?? Number.NaN
      const poured = tank.recipe.steps.filter(isBath).map(({ handling }) => handling.pour.seconds)
      return [filled, ...poured].map((one) => outside(one, pour))
    },
  },
  {
    rows: [tap.row],
    says: 'it is tapped right after the pour',
    tolerance: exact,
    errors: () => {
      const parts = planned(threeBaths, 480).jobs.find(({ id }) => id === 'developer/change')?.parts ?? []
      return [broken(parts.map(({ part }) => part).join(' ') === 'pour tap turns')]
    },
  },
  {
    rows: opening.rows,
    says: 'half a minute of turning to begin with',
    tolerance: exact,
    errors: () => [Math.abs(lengthOf(turnsOf(developer.agitation)?.opening ?? null) - opening.seconds)],
  },
  {
    rows: afterwards.rows,
    says: 'then five seconds each minute',
    tolerance: exact,
    errors: () => {
      const { turn, every } = turnsOf(developer.agitation) ?? { turn: null, every: Number.NaN }
      return differences([lengthOf(turn), every], [afterwards.seconds, afterwards.every_s])
    },
  },
  {
    rows: drain.rows,
    says: 'pouring out begins ten seconds before the time ends',
    tolerance: exact,
    errors: () =>
      planned(threeBaths, 480)
        .baths.filter(({ id }) => bathIn(threeBaths, id).convention.ends === 'end-of-drain')
        .map(({ drainStart, clockEnd }) => Math.abs(clockEnd - drainStart - drain.seconds)),
  },
  {
    rows: [fixer.row],
    says: 'fixer: turned for 15 s, then each half minute',
    tolerance: exact,
    errors: () => {
      const fix = turnsOf(bathIn(threeBaths, 'fix').agitation)
      return differences([lengthOf(fix?.opening ?? null), fix?.every ?? 0], [fixer.opening_s, fixer.every_s])
    },
  },
]

const afterDevelopment: readonly Check[] = [
  {
    rows: stop.rows,
    says: 'a stop of 30–60 s without a rest, acid or water',
    tolerance: exact,
    errors: () =>
      ['three-bath-acid-stop', 'three-bath-water-stop', 'three-bath-wash-aid', 'stand'].flatMap((id) => {
        const bath = bathIn(list(id), 'stop')
        return [outside(fixedTime(bath), stop), broken(bath.agitation.kind === 'continuous')]
      }),
  },
  {
    rows: lid.rows,
    says: 'the lid stays on for two minutes of fixing, in every list that takes it off',
    tolerance: exact,
    errors: () =>
      SHIPPED_RECIPES.filter((recipe) => step(recipe, 'lid-off') !== undefined).flatMap((recipe) => {
        const { laid, baths } = planned(recipe, recipe.steps.some(timed) ? 480 : null)
        const off = laid.find((one) => one.step.id === 'lid-off')?.in ?? 0
        const fix = baths.find(({ id }) => id === 'fix')?.clockStart ?? 0
        return [Math.max(0, lid.after_s - (off - fix))]
      }),
  },
  {
    rows: [washAid.row],
    says: 'with a wash aid: half a minute of rinsing, two of aid, five of water',
    tolerance: exact,
    errors: () => {
      const times = ['rinse', 'wash-aid', 'wash-1', 'wash-2'].map((id) =>
        fixedTime(bathIn(list('three-bath-wash-aid'), id)),
      )
      const [rinse, aid, one, two] = times as [number, number, number, number]
      return differences([rinse, aid, one + two], [washAid.rinse_s, washAid.aid_s, washAid.wash_s])
    },
  },
  {
    rows: wetting.rows,
    says: 'a minute of wetting agent',
    tolerance: exact,
    errors: () => [Math.abs(fixedTime(bathIn(threeBaths, 'wetting')) - wetting.seconds)],
  },
  {
    rows: [fixing.row],
    says: 'fixing takes twice the clearing time',
    tolerance: exact,
    errors: () => {
      const fix = planned(threeBaths, 480, fixing.clears_s).baths.find(({ id }) => id === 'fix')
      return [Math.abs((fix?.clockEnd ?? 0) - (fix?.clockStart ?? 0) - fixing.fix_s)]
    },
  },
  {
    rows: [push.row],
    says: 'a push of one stop and of two, as factors on the time',
    tolerance: exact,
    errors: () =>
      push.stops.flatMap((stops, i) => {
        const found = expectOk(pushFactor({ ofTime: 100, exposedAt: 100 * 2 ** stops }))
        return differences([found.low, found.high], push.factors[i] as number[])
      }),
  },
  {
    rows: [data.colourNegative.row],
    says: 'colour negative: half a minute of turning first, ten seconds of draining inside every step',
    tolerance: exact,
    errors: () =>
      list('colour-negative')
        .steps.filter(isBath)
        .flatMap((bath) => [
          Math.abs(bath.handling.drain.seconds - data.colourNegative.drain_s),
          broken(bath.convention.ends === 'end-of-drain'),
          ...(bath.agitation.kind === 'turns'
            ? [Math.abs(lengthOf(bath.agitation.opening) - data.colourNegative.opening_s)]
            : []),
        ]),
  },
]

const timed = (one: Recipe['steps'][number]) => isBath(one) && one.time.law === 'by-developing-time'

export const tankPractice: readonly Check[] = [
  ...aTank,
  ...afterDevelopment,
  ...data.timer.map(
    ({ row, time_s, every_s, first_s, last_s, marks, drain_from_s, drain_to_s }): Check => ({
      rows: [row],
      says: `8:00 turned each ${every_s} s: ${marks} later turns, drained in the last ten seconds`,
      tolerance: exact,
      errors: () => {
        const found = marksOf(time_s, every_s)
        return differences(
          [found.marks.length, found.marks[0] ?? 0, found.marks.at(-1) ?? 0, ...found.drains],
          [marks, first_s, last_s, drain_from_s, drain_to_s],
        )
      },
    }),
  ),
  {
    rows: [data.counted.row],
    says: 'as many marks as the published count, wherever the last turn fits whole',
    tolerance: exact,
    errors: () => data.counted.steps_s.flatMap(miscounted),
  },
]
