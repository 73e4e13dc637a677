import type { Instant } from '../../kernel/index.js'
import type { EventStamp, Happening, RunEvent, StatedTo } from '../events/definition.js'
import { PAPER } from '../events/paper.js'
import type { TankPlan } from '../plan/definition.js'
import type { FromPaper, WrittenTank } from './definition.js'

/** A tank of the sheet beside its plan, and where the interface has it. Tanks that the plan lacks are not read. */
export interface SheetTank {
  readonly plan: TankPlan
  readonly written: WrittenTank
  readonly field: string
}

export const event = (
  tank: string,
  bath: number | null,
  at: Instant,
  statedTo: StatedTo,
  happening: Happening,
): FromPaper => ({ tank, bath, at, statedTo, happening })

/** Who typed, when, and as which entry. */
export interface Typist {
  /** The entry that the sheet was sent as. */
  readonly entry: string
  readonly now: Instant
  readonly actor: string
  readonly nextId: () => string
}

/** What a sheet says, as events. They carry when and by whom they were typed; their instants are the stated ones. */
export const paperEvents = (happened: readonly FromPaper[], { entry, now, actor, nextId }: Typist): RunEvent[] =>
  happened.map(({ tank, bath, at, statedTo, happening }): RunEvent => {
    const clocks = { device: PAPER, life: entry, monotonicMs: 0, wallMs: now, serverOffsetMs: now }
    const stamp: EventStamp = { id: nextId(), ...clocks, statedMs: at, statedTo, tank, bath, actor }
    return { ...stamp, ...happening }
  })
