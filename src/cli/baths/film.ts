import { failed, ok, type Result } from '../../kernel/index.js'
import { type FilmPiece, FRAMES_OF_A_ROLL } from '../../science/index.js'
import type { FixQuestion, RollsQuestion } from '../../wire/index.js'
import { usage } from '../output.js'

type AskedFilm = RollsQuestion['film'][number]
type FixedFilm = NonNullable<FixQuestion['bath']>['film'][number]

/** `135-24=2`, `120`, `4×5=12`: the format, for 135 its frames, and how many. The science knows which formats there are. */
export function filmIn(text: string): Result<AskedFilm> {
  const groups = /^(?<name>[^=\s]+)(?:=(?<count>\d{1,6}))?$/.exec(text.trim())?.groups
  if (groups === undefined)
    return failed(usage(`“${text}” is not film. Write its format and how many, like “135-24=2” or “4x5=12”.`))
  const name = (groups.name as string).toLowerCase().replace('×', 'x')
  const count = groups.count === undefined ? 1 : Number(groups.count)
  const frames = /^135-(\d{1,4})$/.exec(name)?.[1]
  return ok(frames === undefined ? { format: name, count } : { format: '135', frames: Number(frames), count })
}

/** The same with a family before it: `tabular:120=3`. */
export function fixedFilmIn(text: string): Result<FixedFilm> {
  const groups = /^(?:(?<family>ordinary|tabular|high-iodide):)?(?<film>[^:]+)$/.exec(text.trim())?.groups
  if (groups === undefined)
    return failed(usage(`“${text}” is not film. Families are ordinary, tabular and high-iodide, like “tabular:120=3”.`))
  const film = filmIn(groups.film as string)
  return film.ok ? ok({ ...film.value, family: (groups.family ?? 'ordinary') as FixedFilm['family'] }) : film
}

/** `135-36`, `120`, `4×5`. */
export const filmName = ({ format, frames = FRAMES_OF_A_ROLL }: FilmPiece): string =>
  format === '135' ? `135-${frames}` : format.replace('x', '×')
