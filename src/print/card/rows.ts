import { type Celsius, celsius, fahrenheit, type Seconds, toFahrenheit, type UnitSystem } from '../../kernel/index.js'
import { developingTime, type Modifier, type Position, type TimeBasis } from '../../science/index.js'

/** One line of the card's table. */
export interface Row {
  readonly temperature: Celsius
  readonly time: Seconds
  readonly position: Position
}

/** Steps of the table in the bench's degrees, finest first, and how far past the sheet it goes at least. */
const STEPS = { metric: { steps: [1, 2, 5], past: 2 }, us: { steps: [2, 5, 10], past: 4 } } as const

/** A step of the table gives way to a point of the sheet that lies this near, in steps. */
const NEAR = 0.3
/** A sheet with more points than this is shown by its whole degrees only. */
const FEW = 6
/** A sheet of one point says least about what lies around it, and is asked about the more: so much further. */
const ALONE = 2

interface Asking {
  readonly basis: TimeBasis
  readonly modifiers: readonly Modifier[]
  /** The temperature that the card leads with; the table reaches it. */
  readonly asked: Celsius
  readonly units: UnitSystem
  /** Rows there is room for. */
  readonly most: number
}

/**
 * Times for whole degrees (°C, or every second °F) from a little before the sheet to a little past it, the
 * sheet's own points among them, cold to warm. A fixed time has its one row.
 */
export function tableRows(asking: Asking): Row[] {
  const { basis, modifiers, units, most } = asking
  const rows = (temperatures: readonly Celsius[]): Row[] =>
    temperatures.flatMap((temperature) => {
      const answer = developingTime(basis, temperature, { modifiers })
      return answer.ok ? [{ temperature, time: answer.value.time, position: answer.value.position }] : []
    })
  if (basis.kind === 'fixed') return rows([basis.reference.temperature])
  const tables = STEPS[units].steps.map((step) => rows(stepped(asking, step)))
  return tables.find((table) => table.length <= most) ?? thinned(tables.at(-1) ?? [], most)
}

function stepped({ basis, asked, units }: Asking, step: number): Celsius[] {
  const bench = (value: Celsius) => (units === 'us' ? toFahrenheit(value) : value)
  const own = basis.points.map((point) => point.temperature)
  const past = STEPS[units].past * (own.length === 1 ? ALONE : 1)
  const points = own.map(bench)
  const first = Math.floor(Math.min(...points.map((point) => point - past), bench(asked)) / step + 1e-6)
  const last = Math.ceil(Math.max(...points.map((point) => point + past), bench(asked)) / step - 1e-6)
  const whole = Array.from({ length: last - first + 1 }, (_, i) => (first + i) * step)
  const shown = own.length <= FEW ? own : own.filter((point) => isMultiple(bench(point), step))
  const free = whole.filter((degree) => shown.every((point) => Math.abs(bench(point) - degree) > NEAR * step))
  return [...shown, ...free.map((degree) => (units === 'us' ? fahrenheit(degree) : celsius(degree)))].sort(
    (a, b) => a - b,
  )
}

const isMultiple = (value: number, step: number): boolean => Math.abs(value / step - Math.round(value / step)) < 1e-6

/** Every so many rows, the last one kept. */
function thinned(rows: readonly Row[], most: number): Row[] {
  const every = Math.ceil(rows.length / Math.max(1, most))
  return rows.filter((_, i) => (rows.length - 1 - i) % every === 0)
}
