import {
  type Celsius,
  type Instant,
  type Reading,
  readDuration,
  readTemperature,
  readTimeOfDay,
  type Seconds,
  type TimeOfDay,
} from '../../../../kernel/index.js'
import {
  type Finding,
  type RunEvent,
  readSheet,
  type Score,
  type SheetRead,
  type TankPlan,
  type WrittenMishap,
  type WrittenReading,
  type WrittenStep,
  type WrittenTank,
} from '../../../../score/index.js'
import {
  EMPTY_ROW,
  type GivenUpDraft,
  type MishapDraft,
  type PaperDraft,
  type RowDraft,
  rowKey,
  tankOf,
} from './draft.js'
import type { Unit } from './units.js'

export interface Given {
  readonly draft: PaperDraft
  readonly score: Score
  readonly units: Unit
  readonly zone: string
  readonly now: Instant
  /** What screens wrote down before. */
  readonly known: readonly RunEvent[]
}

/** What is to be shown beside one box. */
export interface Boxed<T> {
  /** Null for an empty box. */
  readonly reading: Reading<T> | null
  readonly at: Instant | null
  readonly finding: Finding | null
}

/** How a whole sheet was read. Boxes are named by tank, step and side: `A/2/out`; readings `A/reads/0`. */
export interface PaperReading {
  readonly sheet: SheetRead
  readonly times: Readonly<Record<string, Boxed<TimeOfDay>>>
  readonly temperatures: Readonly<Record<string, Boxed<Celsius>>>
  readonly clearings: Readonly<Record<string, Boxed<Seconds>>>
  /** Boxes that have to be looked at again before the sheet can be kept. */
  readonly wrong: number
}

const typed = <T>(text: string, reader: (text: string) => Reading<T>): Reading<T> | null =>
  text.trim() === '' ? null : reader(text)
const read = <T>(reading: Reading<T> | null): T | null => (reading?.kind === 'read' ? reading.value : null)
const SIDES = [
  ['in', 'in_at'],
  ['out', 'out_at'],
  ['done', 'done_at'],
] as const

/** Reads every box, puts them together to a sheet, and finds for each box what is to be said beside it. */
export function readDraft({ draft, score, units, zone, now, known }: Given): PaperReading {
  const readings = new Readings(draft, units)
  const tanks = score.tanks.map((plan) => readings.tank(plan))
  const zero = readings.time('zero', draft.zero)
  const written = { day: draft.day, zero, tanks }
  const sheet = readSheet(score, written, { zone, now, known })
  const fields = readings.fieldsOf(tanks)
  const boxed = <T>(name: string, reading: Reading<T> | null): Boxed<T> => {
    const field = fields.get(name) ?? name
    const finding = sheet.findings.find((one) => one.field === field) ?? null
    return { reading, at: sheet.moments.get(field) ?? null, finding }
  }
  const all = <T>(map: ReadonlyMap<string, Reading<T> | null>) =>
    Object.fromEntries([...map].map(([name, reading]) => [name, boxed(name, reading)]))
  return {
    sheet,
    times: all(readings.times),
    temperatures: all(readings.temperatures),
    clearings: all(readings.clearings),
    wrong: readings.unread() + sheet.findings.filter(({ stands }) => stands !== 'told').length,
  }
}

/** Stands in the record where none was written. */
const NO_REASON = 'no reason written'

class Readings {
  readonly times = new Map<string, Reading<TimeOfDay> | null>()
  readonly temperatures = new Map<string, Reading<Celsius> | null>()
  readonly clearings = new Map<string, Reading<Seconds> | null>()
  /** Times that have to be there and are not. */
  #missing = 0

  constructor(
    readonly draft: PaperDraft,
    readonly units: Unit,
  ) {}

  time(name: string, text: string): TimeOfDay | null {
    const reading = typed(text, (one) => readTimeOfDay(one))
    this.times.set(name, reading)
    return read(reading)
  }

  tank({ tank, laid }: TankPlan): WrittenTank {
    const { readings, remarks, mishaps, givenUp } = tankOf(this.draft, tank.tank)
    return {
      tank: tank.tank,
      steps: laid.flatMap(({ index }) => {
        const row = this.draft.rows[rowKey(tank.tank, index)]
        return row === undefined ? [] : [this.#step(tank.tank, index, row)]
      }),
      readings: readings.flatMap((one, i): WrittenReading[] => {
        const name = `${tank.tank}/reads/${i}`
        const reading = typed(one.temperature, (text) => readTemperature(text, { system: this.units.system }))
        this.temperatures.set(name, reading)
        const at = this.time(name, one.at)
        const shown = read(reading)
        if (shown === null) return []
        return [{ step: developing(laid), at, temperature: (shown - this.units.off) as Celsius, sure: one.sure }]
      }),
      remarks: remarks.flatMap(({ text, at }, i) => {
        const time = this.time(`${tank.tank}/remark/${i}`, at)
        return text.trim() === '' ? [] : [{ at: time, text: text.trim() }]
      }),
      mishaps: mishaps.flatMap((one, i) => this.#mishap(`${tank.tank}/mishap/${i}`, one)),
      givenUp: givenUp === null ? null : this.#givenUp(tank.tank, givenUp),
    }
  }

  /** Without its time a mishap is not on the sheet: what it changes counts from there. */
  #mishap(name: string, { mishap, at, time }: MishapDraft): WrittenMishap[] {
    const when = this.time(name, at)
    const reference = typed(mishap === 'wrong-dilution' ? time : '', (text) => readDuration(text))
    this.clearings.set(name, reference)
    if (at.trim() === '') this.#missing += 1
    return when === null ? [] : [{ mishap, at: when, referenceTime: read(reference) }]
  }

  #givenUp(tank: string, { reason, at }: GivenUpDraft): NonNullable<WrittenTank['givenUp']> {
    return { at: this.time(`${tank}/given-up`, at), reason: reason.trim() || NO_REASON }
  }

  #step(tank: string, index: number, row: RowDraft): WrittenStep {
    const name = (side: string) => `${rowKey(tank, index)}/${side}`
    // What was typed before a step was left out is not on the sheet.
    const box = (side: 'in' | 'out' | 'done') => this.time(name(side), row.leftOut ? '' : row[side])
    const clearing = typed(row.leftOut ? '' : row.clearing, (text) => readDuration(text))
    this.clearings.set(name('clearing'), clearing)
    return {
      step: index,
      inAt: box('in'),
      outAt: box('out'),
      doneAt: box('done'),
      clearing: read(clearing),
      leftOut: row.leftOut ? row.reason.trim() || NO_REASON : null,
      sure: row.sure,
    }
  }

  /** By the name of a box what the sheet calls it. Boxes that were not read are not on the sheet. */
  fieldsOf(tanks: readonly WrittenTank[]): Map<string, string> {
    const fields = new Map<string, string>()
    for (const [i, { tank, steps }] of tanks.entries()) {
      for (const [k, { step }] of steps.entries())
        for (const [side, field] of SIDES)
          fields.set(`${rowKey(tank, step)}/${side}`, `tanks[${i}].steps[${k}].${field}`)
      const { readings, remarks, mishaps, givenUp } = tankOf(this.draft, tank)
      let place = 0
      for (const [k] of readings.entries())
        if (read(this.temperatures.get(`${tank}/reads/${k}`) ?? null) !== null)
          fields.set(`${tank}/reads/${k}`, `tanks[${i}].readings[${place++}]`)
      let remarked = 0
      for (const [k, { text }] of remarks.entries())
        if (text.trim() !== '') fields.set(`${tank}/remark/${k}`, `tanks[${i}].remarks[${remarked++}].at`)
      let gone = 0
      for (const [k] of mishaps.entries())
        if (read(this.times.get(`${tank}/mishap/${k}`) ?? null) !== null)
          fields.set(`${tank}/mishap/${k}`, `tanks[${i}].mishaps[${gone++}].at`)
      if (givenUp !== null) fields.set(`${tank}/given-up`, `tanks[${i}].given_up.at`)
    }
    return fields
  }

  unread(): number {
    const all = [...this.times.values(), ...this.temperatures.values(), ...this.clearings.values()]
    return this.#missing + all.filter((reading) => reading !== null && reading.kind !== 'read').length
  }
}

/** The bath whose temperature is followed; the first one where none is. */
export const developing = (laid: TankPlan['laid']): number =>
  laid.find(({ development }) => development !== null)?.index ?? 0

export const rowOf = (draft: PaperDraft, tank: string, step: number): RowDraft =>
  draft.rows[rowKey(tank, step)] ?? EMPTY_ROW
