import { failed, nameKey, ok, problem, type Result, type Seconds } from '../../kernel/index.js'
import type { Tolerance } from '../../planning/index.js'
import { type ContrastLaw, contrastAfter, fitContrast, timeForContrast } from '../../science/index.js'
import type { FilmStatement } from '../../wire/index.js'

/** What a film bears of which nothing is kept: common practice. */
const USUAL: Tolerance = { longer: 0.1, shorter: 0.1 }
/** More than twice its time is no tolerance of any film. */
const MOST_LONGER = 1

/** The law of contrast in time that a film's strips say; null where it has none. */
function lawOf({ strips }: FilmStatement): Result<ContrastLaw | null> {
  if (strips === undefined || strips.length === 0) return ok(null)
  const fitted = fitContrast(strips.map(({ time_s, contrast }) => ({ time: time_s, contrast })))
  return fitted.ok ? ok(fitted.value.law) : failed({ ...fitted.problem, field: 'strips' })
}

/** Strips that make no law, and a tolerance in contrast without strips, are refused when a film is kept. */
export function soundTolerance(film: FilmStatement): Result<null> {
  const law = lawOf(film)
  if (!law.ok) return law
  return film.tolerance.in === 'contrast' && law.value === null
    ? failed(problem('film.contrast-needs-strips', { name: film.name }, 'tolerance'))
    : ok(null)
}

/**
 * How far from its time a film may be developed, as parts of that time. One kept in contrast is turned into time by
 * the law of its strips: so much more or less contrast than the wanted time gives.
 */
export function toleranceOf(films: readonly FilmStatement[], name: string, wanted: Seconds): Tolerance {
  const film = films.find((one) => nameKey(one.name) === nameKey(name))
  if (film === undefined) return USUAL
  const { down, up } = film.tolerance
  if (film.tolerance.in === 'percent') return { shorter: down / 100, longer: up / 100 }
  const law = lawOf(film)
  const contrast = law.ok && law.value !== null ? contrastAfter(law.value, wanted) : null
  if (!law.ok || law.value === null || contrast === null || !contrast.ok) return USUAL
  const [least, most] = [contrast.value - down, contrast.value + up].map((one) =>
    timeForContrast(law.value as ContrastLaw, one),
  )
  // A contrast that the film never reaches sets no upper end of its own.
  return {
    longer: most?.ok ? Math.min(MOST_LONGER, Math.max(0, most.value / wanted - 1)) : MOST_LONGER,
    shorter: least?.ok ? Math.max(0, 1 - least.value / wanted) : 1,
  }
}
