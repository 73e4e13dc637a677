import { type RunEvent, SHIPPED_RECIPES } from '../../src/score/index.js'
import type { PlanRun, RecipeStatement } from '../../src/wire/index.js'
import { NOON } from './bench.js'

/** The shipped list with an acid stop, of its black-and-white baths. */
export const THREE_BATHS = SHIPPED_RECIPES[0] as (typeof SHIPPED_RECIPES)[number]

const plain = <T>(value: T) => JSON.parse(JSON.stringify(value))

/** A list of one's own. */
export function listOfBaths(changes: Partial<RecipeStatement> = {}): RecipeStatement {
  const { id: _, ...statement } = plain(THREE_BATHS)
  return { ...statement, name: 'Three baths, mine', ...changes }
}

export const tank = (name = 'A', film = 'Corvane 400', changes: Record<string, unknown> = {}) => ({
  reels: 1,
  on_reels: [{ film, exposure_index: 400, label: 'roll 12' }],
  developer: 'ascorbate',
  dilution_parts: [1, 3],
  recipe: plain(THREE_BATHS),
  conditions: { tank: name, development: { from: 'own', time: 480, temperature: 20 } },
  ...changes,
})

/** A plan as it is asked for; what the boundary fills in by itself is filled in. */
export const runPlan = (changes: Record<string, unknown> = {}): PlanRun =>
  ({ practice: null, note: '', thermometer_id: null, tanks: [tank()], ...changes }) as PlanRun

/** A number as an id: events of the tests are told apart by it. */
export const eventId = (number: number): string => `0190d1c2-0000-7000-8000-${String(number).padStart(12, '0')}`

type Kind = RunEvent['kind']

/** What a phone writes down `seconds` after noon, when it has met the server. */
export function happened(kind: Kind, number: number, bath: number | null = null, more: Record<string, unknown> = {}) {
  const at = Number(more['seconds'] ?? number)
  const { seconds: _, ...fields } = more
  return {
    id: eventId(number),
    device: 'phone',
    life: 'life-1',
    monotonicMs: at * 1000,
    wallMs: NOON + at * 1000,
    serverOffsetMs: NOON,
    tank: 'A',
    bath,
    actor: 'owner',
    kind,
    ...fields,
  } as RunEvent
}

/** The steps of the list that are baths, by their places. */
const bathPlaces = THREE_BATHS.steps.flatMap((step, i) => (step.step === 'bath' ? [i] : []))

/** A whole run with hands exactly on time: each bath poured in and out, each step between done. */
export function wholeRun(first = 1, developed = 470): RunEvent[] {
  let [number, at] = [first, 0]
  const events = [happened('started', number++, null, { seconds: 0 })]
  for (const [i, step] of THREE_BATHS.steps.entries()) {
    if (step.step === 'act') {
      at += step.within === null ? 30 : 0
      if (step.within === null) events.push(happened('step-done', number++, i, { seconds: at }))
      continue
    }
    at += 15
    events.push(happened('poured-in', number++, i, { seconds: at }))
    at += i === bathPlaces[0] ? developed : 60
    events.push(happened('poured-out', number++, i, { seconds: at }))
    at += 13
  }
  return events
}
