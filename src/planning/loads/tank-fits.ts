import { failed, type Millilitres, millilitres, ok, problem, type Result } from '../../kernel/index.js'
import { type FilmFormat, FORMAT_FACTS } from '../../science/index.js'

/** So many reels of a format, or so many sheets. */
export interface Load {
  readonly format: FilmFormat
  readonly count: number
}

/** A tank of the shelf: how many reels of a format it holds (sheets by their number), and how much covers them. */
export interface KitTank {
  readonly name: string
  readonly holds: readonly { readonly format: FilmFormat; readonly count: number; readonly covers: Millilitres }[]
}

/** A film on its way onto a reel. */
export interface OnItsReel {
  readonly format: FilmFormat
  readonly sheets: number
  /** Counted from 1; two films on one reel are one reel. */
  readonly reel: number
}

/** Reels by format; sheets are counted one by one, whatever holds them. */
export function loadOf(films: readonly OnItsReel[]): Load[] {
  const formats = [...new Set(films.map(({ format }) => format))]
  return formats.map((format) => {
    const those = films.filter((film) => film.format === format)
    const reels = new Set(those.map(({ reel }) => reel)).size
    const sheets = those.reduce((sum, film) => sum + film.sheets, 0)
    return { format, count: isSheet(format) ? sheets : reels }
  })
}

const isSheet = (format: FilmFormat): boolean => FORMAT_FACTS[format].kind === 'sheet'

/**
 * How much covers a load in a tank, null where the tank does not hold it. Reels stand on one another, so each takes
 * its part of the height: 1 ÷ the most of its format. Of a mixed load each format asks for what would cover it alone;
 * together that is rather too much than too little (common practice, no measurement).
 */
export function coverOf({ holds }: KitTank, load: readonly Load[]): Millilitres | null {
  let [height, covers] = [0, 0]
  for (const { format, count } of load) {
    const rows = holds.filter((row) => row.format === format)
    const enough = rows.filter((row) => row.count >= count).sort((a, b) => a.covers - b.covers)[0]
    if (enough === undefined) return null
    height += count / Math.max(...rows.map((row) => row.count))
    covers += enough.covers
  }
  return height > 1 + 1e-9 ? null : millilitres(covers)
}

/** A tank that would do, and how much it takes. */
export interface TankThatFits {
  readonly name: string
  readonly covers: Millilitres
}

/** The tanks that hold a load, the one that takes least first. */
export const tanksFor = (tanks: readonly KitTank[], load: readonly Load[]): TankThatFits[] =>
  tanks
    .flatMap((tank): TankThatFits[] => {
      const covers = coverOf(tank, load)
      return covers === null ? [] : [{ name: tank.name, covers }]
    })
    .sort((a, b) => a.covers - b.covers)

/**
 * How much covers a load in the tank it is planned for. Refused when the tank does not hold it, or when the planned
 * volume (null: not said) does not cover it; the refusal says which tank of the shelf would do.
 */
export function fitsTank(
  tank: KitTank,
  load: readonly Load[],
  volume: Millilitres | null,
  shelf: readonly KitTank[],
): Result<Millilitres> {
  const covers = coverOf(tank, load)
  const others = tanksFor(
    shelf.filter(({ name }) => name !== tank.name),
    load,
  )
  const words = load.map(({ format, count }) => inWords(format, count)).join(' and ')
  if (covers === null)
    return failed(problem('loads.tank-holds-too-little', { tank: tank.name, load: words, others: instead(others[0]) }))
  if (volume === null || volume >= covers) return ok(covers)
  const covered = others.find((other) => other.covers <= volume)
  const facts = { tank: tank.name, load: words, covers: Math.ceil(covers), volume }
  return failed(problem('loads.tank-does-not-cover', { ...facts, others: instead(covered) }))
}

const instead = (other: TankThatFits | undefined): string =>
  other === undefined
    ? 'no other tank of the shelf does, so take fewer at once'
    : `${other.name} would, with ${Math.ceil(other.covers)} mL`

const inWords = (format: FilmFormat, count: number): string =>
  isSheet(format)
    ? `${count} ${count === 1 ? 'sheet' : 'sheets'} of ${format.replace('x', '×')}`
    : `${count} ${count === 1 ? 'reel' : 'reels'} of ${format}`
