import type { VesselMaterial } from '../../../../science/index.js'
import { EMPTY_LOAD, type LoadDraft } from './rolls/load.js'

/** A plan as it is being typed. */
export interface PlanDraft {
  readonly recipe: string
  readonly tank: string
  readonly reels: string
  /** Null until it is typed: that of the kept time. */
  readonly film: string | null
  readonly index: string | null
  readonly label: string
  /** Rolls of the register, in place of a film that is typed. */
  readonly load: LoadDraft
  readonly volume: string
  /** Id of a kept time, or `own` for one that is typed. */
  readonly from: string
  readonly time: string
  readonly temperature: string
  /** Measured temperatures by id of the step. */
  readonly temperatures: Readonly<Record<string, string>>
  /** Id of a thermometer of the shelf; empty for none. */
  readonly thermometer: string
  /** Around the tank; empty where it is not to be reckoned with. */
  readonly room: string
  readonly material: VesselMaterial
  /** Of the empty tank with its reels. */
  readonly weight: string
  readonly override: boolean
  readonly practice: 'no' | '1' | '5' | '20'
  readonly note: string
  /** Tanks beside the first one. */
  readonly more: readonly TankDraft[]
}

/** What all tanks of a plan have in common; everything else is each tank's own. */
export type SharedField = 'thermometer' | 'room' | 'practice' | 'note' | 'more'
/** One more tank as it is being typed. */
export type TankDraft = Omit<PlanDraft, SharedField>

export const EMPTY_PLAN: PlanDraft = {
  recipe: '',
  tank: 'A',
  reels: '1',
  film: null,
  index: null,
  label: '',
  load: EMPTY_LOAD,
  volume: '',
  from: '',
  time: '',
  temperature: '',
  temperatures: {},
  thermometer: '',
  room: '',
  material: 'plastic',
  weight: '',
  override: false,
  practice: 'no',
  note: '',
  more: [],
}
