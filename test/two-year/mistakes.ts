import { celsius, type ProblemCode, toFahrenheit } from '../../src/kernel/index.js'
import { LIMITS } from '../../src/science/index.js'
import type { TimeStatement } from '../../src/wire/index.js'
import type { Chance } from './chance.js'
import type { Sheet } from './sheets.js'

/** A list of times as typed at first, with one mistake in it that the program must not take. */
export interface RefusedAttempt {
  readonly what: string
  readonly code: ProblemCode
  readonly typed: readonly TimeStatement[]
}

type Points = TimeStatement['points']

/** A mistake: how it changes a statement, or null where the statement does not lend itself to it. */
interface Mistake {
  readonly what: string
  readonly code: ProblemCode
  readonly of: (statement: TimeStatement) => TimeStatement | null
}

const withPoints = (statement: TimeStatement, points: Points): TimeStatement => ({ ...statement, points })
const ends = ({ points }: TimeStatement) => ({ first: points[0], last: points[points.length - 1] })

const MISTAKES: readonly Mistake[] = [
  {
    what: 'types the °F of the sheet as °C',
    code: 'times.impossible-temperature',
    of: (statement) =>
      withPoints(
        statement,
        statement.points.map((point) => ({ ...point, temperature_c: toFahrenheit(celsius(point.temperature_c)) })),
      ),
  },
  {
    what: 'swaps the times of the coldest and the warmest point',
    code: 'times.slower-when-warmer',
    of: (statement) => {
      const { first, last } = ends(statement)
      if (statement.kind !== 'ordinary' || !first || !last || first.time_s === last.time_s) return null
      const swapped = [
        { ...first, time_s: last.time_s },
        ...statement.points.slice(1, -1),
        { ...last, time_s: first.time_s },
      ]
      return withPoints(statement, swapped)
    },
  },
  {
    what: 'types a second time for one temperature',
    code: 'times.two-times-at-one-temperature',
    of: (statement) => {
      const { first } = ends(statement)
      if (statement.kind !== 'ordinary' || !first) return null
      return withPoints(statement, [...statement.points, { ...first, time_s: first.time_s + 60 }])
    },
  },
  {
    what: 'types hours for minutes',
    code: 'times.impossible-time',
    of: (statement) => {
      const points = statement.points.map((point) => ({ ...point, time_s: point.time_s * 60 }))
      // Five minutes typed as five hours is long, yet somebody may develop so.
      return points.some(({ time_s }) => time_s > LIMITS.pointTime.to) ? withPoints(statement, points) : null
    },
  },
  { what: 'leaves the times out', code: 'times.no-points', of: (statement) => withPoints(statement, []) },
  {
    what: 'loses the point of a coefficient',
    code: 'times.bad-coefficient',
    of: (statement) =>
      statement.coefficient === null ? null : { ...statement, coefficient: Math.round(statement.coefficient * 10) },
  },
  {
    what: 'types the usable range the wrong way round',
    code: 'times.bad-range',
    of: (statement) =>
      statement.usable && { ...statement, usable: { from_c: statement.usable.to_c, to_c: statement.usable.from_c } },
  },
  {
    what: 'types a window that does not hold the temperature',
    code: 'times.bad-window',
    of: (statement) =>
      statement.window && {
        ...statement,
        window: { from_c: statement.window.from_c - 10, to_c: statement.window.to_c - 10 },
      },
  },
  {
    what: 'types a second temperature for a colour developer',
    code: 'times.fixed-needs-one-point',
    of: (statement) => {
      const { first } = ends(statement)
      if (statement.kind !== 'fixed' || !first) return null
      return withPoints(statement, [first, { temperature_c: first.temperature_c - 8, time_s: first.time_s * 2 }])
    },
  },
]

/** Every so many sheets somebody makes one of the mistakes that come up with it. */
const EVERY = 2

/**
 * What is refused before a sheet comes in right: on every second sheet, and on all of a colour developer, the
 * mistake made least often so far. It is in the last line, so that a list of which only a part is wrong must be
 * refused whole.
 */
export function refusedAttempts(sheets: readonly Sheet[]): ReadonlyMap<Sheet, RefusedAttempt> {
  const often = new Map<Mistake, number>()
  const attempts = new Map<Sheet, RefusedAttempt>()
  for (const sheet of sheets) {
    const last = sheet.meant[sheet.meant.length - 1] as TimeStatement
    if (sheet.number % EVERY !== 0 && last.kind !== 'fixed') continue
    const possible = MISTAKES.flatMap((mistake) => {
      const wrong = mistake.of(last)
      return wrong === null ? [] : [{ mistake, wrong }]
    })
    const made = possible.reduce((least, other) =>
      (often.get(other.mistake) ?? 0) < (often.get(least.mistake) ?? 0) ? other : least,
    )
    often.set(made.mistake, (often.get(made.mistake) ?? 0) + 1)
    const { what, code } = made.mistake
    attempts.set(sheet, { what, code, typed: [...sheet.meant.slice(0, -1), made.wrong] })
  }
  return attempts
}

/**
 * A slipped digit that nothing can object to: the coldest time a minute (or, above ten, ten minutes) too long.
 * Where points lie close together a minute would bend the table visibly, so there it is the index that slips.
 */
export function slipped(statement: TimeStatement, chance: Chance): TimeStatement {
  const { first, last } = ends(statement)
  if (!first || !last) return statement
  const single = statement.points.length === 1
  if (!single && Math.abs(last.temperature_c - first.temperature_c) < 4) return slippedIndex(statement)
  const by = single && first.time_s < 600 ? chance.pick([60, 600]) : 60
  return withPoints(statement, [{ ...first, time_s: first.time_s + by }, ...statement.points.slice(1)])
}

const slippedIndex = (statement: TimeStatement): TimeStatement => ({
  ...statement,
  exposure_index: (statement.exposure_index ?? 100) + 10,
})
