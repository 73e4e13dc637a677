import {
  type Instant,
  uuidV7,
  wallClocks,
  writeSpan,
  writeTemperature,
  writeTimeOnClock,
} from '../../../../kernel/index.js'
import {
  isBath,
  isFromPaper,
  type MishapKind,
  type RunEvent,
  type Score,
  type TankPlan,
} from '../../../../score/index.js'
import { deviceClock, deviceRandom } from '../../../shared/platform/index.js'
import type { Unit } from './units.js'

/** One row of boxes as it is being typed. */
export interface RowDraft {
  readonly in: string
  readonly out: string
  readonly done: string
  readonly clearing: string
  readonly leftOut: boolean
  readonly reason: string
  readonly sure: boolean
}

export interface ReadingDraft {
  readonly temperature: string
  readonly at: string
  readonly sure: boolean
}

export interface RemarkDraft {
  readonly text: string
  readonly at: string
}

export interface MishapDraft {
  readonly mishap: MishapKind
  readonly at: string
  /** For a wrong dilution: the sheet's time at the one that was in the tank. */
  readonly time: string
}

export interface GivenUpDraft {
  readonly reason: string
  readonly at: string
}

/** What was done with one tank, beside the boxes of its steps. */
export interface TankDraft {
  readonly readings: readonly ReadingDraft[]
  readonly remarks: readonly RemarkDraft[]
  readonly mishaps: readonly MishapDraft[]
  /** Null where the run went on to its end. */
  readonly givenUp: GivenUpDraft | null
}

/** A sheet as it is being typed. */
export interface PaperDraft {
  /** Under which it is sent; a sheet that is sent twice is there once. */
  readonly entry: string
  /** When it was sent first; part of what is kept, so it must not change when it is sent again. */
  readonly typedAt: Instant | null
  readonly day: string
  readonly zero: string
  /** By tank and place of the step: `A/2`. */
  readonly rows: Readonly<Record<string, RowDraft>>
  readonly tanks: Readonly<Record<string, TankDraft>>
}

export const EMPTY_ROW: RowDraft = {
  in: '',
  out: '',
  done: '',
  clearing: '',
  leftOut: false,
  reason: '',
  sure: false,
}
export const EMPTY_READING: ReadingDraft = { temperature: '', at: '', sure: false }
export const EMPTY_REMARK: RemarkDraft = { text: '', at: '' }
export const EMPTY_MISHAP: MishapDraft = { mishap: 'fixer-first', at: '', time: '' }
export const EMPTY_TANK: TankDraft = { readings: [EMPTY_READING], remarks: [], mishaps: [], givenUp: null }

/** What stands of a tank; what its draft lacks is empty. */
export const tankOf = ({ tanks }: PaperDraft, tank: string): TankDraft => ({ ...EMPTY_TANK, ...tanks[tank] })

export const rowKey = (tank: string, step: number): string => `${tank}/${step}`
export const freshEntry = (): string => uuidV7({ now: deviceClock.wall }, deviceRandom)

/** An empty sheet of today. */
export const emptySheet = (zone: string): PaperDraft => ({
  entry: freshEntry(),
  typedAt: null,
  day: dayOf(deviceClock.wall(), zone),
  zero: '',
  rows: {},
  tanks: {},
})

const dayOf = (at: Instant, zone: string): string => new Date(wallClocks(zone).shownAt(at)).toISOString().slice(0, 10)

/** The sheet as it was typed in last, whether it stands or was taken back; null where none ever was. */
export function typedBefore(score: Score, events: readonly RunEvent[], zone: string, units: Unit): PaperDraft | null {
  const typed = events.filter((event) => isFromPaper(event) && event.kind !== 'retracted')
  const last = typed.at(-1)
  if (last === undefined) return null
  const entry = typed.filter(({ life }) => life === last.life)
  const writing = new Writing(zone, units)
  return score.tanks.reduce((draft, plan) => writing.tank(draft, plan, entry), {
    ...emptySheet(zone),
    ...writing.head(entry),
  })
}

/** Puts events back into boxes. */
class Writing {
  readonly #clocks: ReturnType<typeof wallClocks>

  constructor(
    readonly zone: string,
    readonly units: Unit,
  ) {
    this.#clocks = wallClocks(zone)
  }

  /** A moment as it was written; nothing for what had no time. */
  at({ statedMs, statedTo }: RunEvent, beforeMs = 0): string {
    if (statedMs == null || statedTo === 'placed') return ''
    const second = (this.#clocks.shownAt(statedMs - beforeMs) / 1000) % 86_400
    return writeTimeOnClock({ second, to: statedTo === 'minute' ? 'minute' : 'second' })
  }

  head(entry: readonly RunEvent[]): Pick<PaperDraft, 'day' | 'zero'> {
    const first = Math.min(
      ...entry.flatMap(({ statedMs, statedTo }) => (statedMs == null || statedTo === 'placed' ? [] : [statedMs])),
    )
    const started = entry.find(({ kind }) => kind === 'started')
    return { day: dayOf(first, this.zone), zero: started === undefined ? '' : this.at(started) }
  }

  tank(draft: PaperDraft, { tank, laid }: TankPlan, entry: readonly RunEvent[]): PaperDraft {
    const own = entry.filter((event) => event.tank === tank.tank)
    const rows = { ...draft.rows }
    for (const event of own) {
      const step = event.bath === null ? undefined : laid[event.bath]?.step
      if (event.bath === null || step === undefined) continue
      const key = rowKey(tank.tank, event.bath)
      const pour = isBath(step) && step.convention.starts === 'end-of-pour' ? step.handling.pour.seconds * 1000 : 0
      rows[key] = { ...EMPTY_ROW, sure: true, ...rows[key], ...this.#box(event, pour) }
    }
    const readings = own.flatMap((event) => (event.kind === 'reading' ? [this.#reading(event)] : []))
    const remarks = own.flatMap((event) => (event.kind === 'noted' ? [{ text: event.text, at: this.at(event) }] : []))
    const mishaps = own.flatMap((event) => (event.kind === 'mishap' ? [this.#mishap(event)] : []))
    const gaveUp = own.find((event) => event.kind === 'abandoned')
    const givenUp = gaveUp === undefined ? null : { reason: gaveUp.reason, at: this.at(gaveUp) }
    const filled = { readings: readings.length === 0 ? EMPTY_TANK.readings : readings, remarks, mishaps, givenUp }
    return { ...draft, rows, tanks: { ...draft.tanks, [tank.tank]: filled } }
  }

  #box(event: RunEvent, pourMs: number): Partial<RowDraft> {
    if (event.kind === 'poured-in') return { in: this.at(event, pourMs) }
    if (event.kind === 'poured-out') return { out: this.at(event) }
    if (event.kind === 'skipped') return { leftOut: true, reason: event.reason }
    if (event.kind !== 'step-done') return {}
    return { done: this.at(event), ...(event.clearing == null ? {} : { clearing: writeSpan(event.clearing) }) }
  }

  #mishap(event: Extract<RunEvent, { kind: 'mishap' }>): MishapDraft {
    const time = event.referenceTime == null ? '' : writeSpan(event.referenceTime)
    return { mishap: event.mishap, at: this.at(event), time }
  }

  #reading(event: Extract<RunEvent, { kind: 'reading' }>): ReadingDraft {
    const shown = (event.temperature + this.units.off) as never
    return { temperature: writeTemperature(shown, this.units.system), at: this.at(event), sure: event.confirmed }
  }
}
