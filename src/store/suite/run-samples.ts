import { seconds } from '../../kernel/index.js'
import type { OwnRecipe, Received, RunRecord } from '../../lab/index.js'
import type { RunPlan } from '../../wire/index.js'

/** 2026-03-01T12:00:00Z */
const NOON = 1_772_366_400_000

const origin = 'practice' as const
const length = (value: number) => ({ seconds: seconds(value), origin })
const bath = (id: string, kind: 'developer' | 'fix') => ({
  step: 'bath' as const,
  id,
  name: id,
  reason: 'line one\nline 「two」',
  cautions: [],
  kind,
  time: kind === 'developer' ? ({ law: 'by-developing-time' } as const) : { law: 'fixed' as const, ...length(300) },
  agitation: { kind: 'none' as const },
  window: null,
  convention: { starts: 'end-of-pour' as const, ends: 'end-of-drain' as const },
  handling: { pour: length(15), drain: length(10), cap: length(3), tap: null },
  goesTo: 'bottle' as const,
  neverPartFromNext: false,
  mayStay: seconds(0),
})

export const recipeOf = (id: string, revision = 1, changes: Partial<OwnRecipe> = {}): OwnRecipe => ({
  id,
  revision,
  savedAt: NOON + revision,
  savedBy: 'owner',
  removed: false,
  copiedFrom: 'single-bath',
  recipe: {
    name: 'Two baths, “mine” 現像',
    process: 'black-and-white',
    about: '',
    steps: [bath('developer', 'developer'), bath('fixer', 'fix')],
  },
  ...changes,
})

export const runOf = (id: string, film = 'Corvane 400', changes: Partial<RunRecord> = {}): RunRecord => ({
  id,
  plannedAt: NOON,
  plannedBy: 'owner',
  plan: {
    practice: null,
    note: '',
    thermometer: null,
    tanks: [
      {
        reels: 2,
        on_reels: [
          { film, exposure_index: 400, label: 'roll 12' },
          { film: 'Tarn 100', exposure_index: null, label: '' },
        ],
        developer: 'ascorbate',
        dilution_parts: [1, 3.5],
        recipe: { ...recipeOf(id).recipe, id } as RunPlan['tanks'][number]['recipe'],
        conditions: { tank: 'A', development: { from: 'own', time: seconds(480), temperature: null } },
        time: null,
      },
    ],
  },
  state: 'planned',
  startedAt: null,
  endedAt: null,
  lastSeq: 0,
  ...changes,
})

export type Event = Received['event']

export const eventOf = (id: string, at = 0): Event => ({
  id,
  device: 'phone',
  life: 'life-1',
  monotonicMs: at,
  wallMs: NOON + at,
  serverOffsetMs: NOON,
  tank: 'A',
  bath: 0,
  actor: 'owner',
  kind: 'skipped',
  reason: 'it’s gone; --',
})
