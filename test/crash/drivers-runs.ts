import { randomUUID } from 'node:crypto'
import { SHIPPED_RECIPES } from '../../src/score/index.js'
import { ask, sendOk } from './asking.js'
import { rows } from './data.js'
import type { Driver } from './drivers.js'

const LANES = 3
const PER_LANE = 12
const EVENTS_AT_ONCE = 3
let markers = 0
const newMarker = (): string => `run ${++markers}`

const [SHIPPED] = SHIPPED_RECIPES
const statement = (name: string) => ({ ...SHIPPED, id: undefined, name })

/** A plan of one tank for this film, as it is sent. */
export const planned = (film: string) => ({
  tanks: [
    {
      reels: 2,
      on_reels: [{ film }, { film }],
      recipe: SHIPPED,
      conditions: { tank: 'A', development: { from: 'own', time: 480, temperature: 20 } },
    },
  ],
})

const event = (kind: string, more: object) => ({
  id: randomUUID(),
  device: 'phone',
  life: 'one',
  monotonicMs: ++markers,
  wallMs: 1_772_366_400_000,
  serverOffsetMs: null,
  tank: 'A',
  bath: null,
  actor: 'owner',
  kind,
  ...more,
})

type Made = { readonly id: string }

async function many(lanes: number, perLane: number, make: () => Promise<Made>): Promise<string[][]> {
  const lane = async () => {
    const ids: string[] = []
    for (let i = 0; i < perLane; i++) ids.push((await make()).id)
    return ids
  }
  return Promise.all(Array.from({ length: lanes }, lane))
}

const freshLists = (url: string, lanes: number, perLane: number) =>
  many(lanes, perLane, () => sendOk<Made>(url, ask('POST', '/api/recipes', { statement: statement(newMarker()) })))
const freshRuns = (url: string, lanes: number, perLane: number) =>
  many(lanes, perLane, () => sendOk<Made>(url, ask('POST', '/api/runs', planned('film'))))

/** Runs with one roll of the register each. */
const loadedRuns = (url: string, lanes: number) =>
  many(lanes, PER_LANE, async () => {
    const statement = { film: 'film', process: 'black-and-white', format: '135' }
    const taken = await sendOk<{ rolls: Made[] }>(url, ask('POST', '/api/rolls', { rolls: [{ statement }] }))
    const [tank] = planned('film').tanks
    const tanks = [{ ...tank, on_reels: [{ roll_id: taken.rolls[0]?.id }] }]
    return sendOk<Made>(url, ask('POST', '/api/runs', { tanks }))
  })

const oneChangeEach = (method: string, suffix: string): Driver => ({
  lanes: LANES,
  keyed: true,
  async prepare(url, lanes) {
    const ids = await freshLists(url, lanes, PER_LANE)
    return (lane, n) => {
      const id = ids[lane]?.[n]
      return id === undefined ? null : ask(method, `/api/recipes/${id}${suffix}`, { seen_revision: 1 }, id)
    }
  },
  effects: (data, { marker }) => rows(data, 'recipe_revisions', { recipe_id: marker, revision: 2, removed: 1 }).length,
})

export const recipeDrivers = {
  keepRecipe: {
    lanes: LANES,
    keyed: true,
    prepare: async () => () => {
      const name = newMarker()
      return ask('POST', '/api/recipes', { statement: statement(name) }, name)
    },
    effects: (data, { marker }) => rows(data, 'recipe_revisions', { name: marker }).length,
  },
  correctRecipe: {
    lanes: LANES,
    keyed: true,
    async prepare(url, lanes) {
      const ids = await freshLists(url, lanes, 1)
      return (lane, n) => {
        const name = newMarker()
        return ask('PUT', `/api/recipes/${ids[lane]?.[0]}`, { seen_revision: n + 1, statement: statement(name) }, name)
      }
    },
    effects: (data, { marker }) => rows(data, 'recipe_revisions', { name: marker }).length,
  },
  removeRecipe: oneChangeEach('DELETE', ''),
  undoRecipe: oneChangeEach('POST', '/undo'),
} satisfies Record<string, Driver>

export const runDrivers = {
  planRun: {
    lanes: LANES,
    keyed: true,
    prepare: async () => () => {
      const film = newMarker()
      return ask('POST', '/api/runs', planned(film), film)
    },
    effects: (data, { marker }) => rows(data, 'run_reels', { film: marker }).length / 2,
  },
  addRunEvents: {
    lanes: LANES,
    keyed: true,
    async prepare(url, lanes) {
      const ids = await loadedRuns(url, lanes)
      return (lane, n) => {
        const actor = newMarker()
        const run = ids[lane]?.[n]
        const notes = Array.from({ length: EVENTS_AT_ONCE - 1 }, () => event('noted', { text: 'note', actor }))
        const events = [event('started', { actor }), ...notes]
        return run === undefined ? null : ask('POST', `/api/runs/${run}/events`, { events }, actor)
      }
    },
    effects: (data, { marker }) => {
      const events = rows(data, 'run_events', { actor: marker })
      const run = events[0]?.['run_id']
      const loaded = run === undefined ? 0 : rows(data, 'roll_events', { run_id: run, state: 'loaded' }).length
      // The roll is loaded exactly when its run has begun; one without the other is half a write.
      return (events.length / EVENTS_AT_ONCE + loaded) / 2
    },
  },
  judgeRun: {
    lanes: LANES,
    keyed: true,
    async prepare(url, lanes) {
      const ids = await freshRuns(url, lanes, 1)
      return (lane) => {
        const note = newMarker()
        return ask('POST', `/api/runs/${ids[lane]?.[0]}/verdicts`, { tank: 'A', density: 'thin', note }, note)
      }
    },
    effects: (data, { marker }) => rows(data, 'run_verdicts', { note: marker }).length,
  },
  abandonRun: {
    lanes: LANES,
    keyed: true,
    async prepare(url, lanes) {
      const ids = await freshRuns(url, lanes, PER_LANE)
      return (lane, n) => {
        const id = ids[lane]?.[n]
        return id === undefined ? null : ask('POST', `/api/runs/${id}/abandon`, { reason: 'no film left' }, id)
      }
    },
    effects: (data, { marker }) => {
      const [run] = rows(data, 'runs', { id: marker })
      const events = rows(data, 'run_events', { run_id: marker, kind: 'abandoned' }).length
      // The run is given up exactly when the event is there; anything else is half a write.
      return (run?.['state'] === 'abandoned') === (events === 1) ? events : 0.5
    },
  },
} satisfies Record<string, Driver>
