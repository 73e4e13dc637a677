import { failed, ok, problem, type Result } from '../../kernel/index.js'
import type { Recipe } from '../../score/index.js'

/** The chemistry that a film is made for. */
export type FilmProcess = 'black-and-white' | 'colour-negative' | 'colour-reversal'
/** What a roll says of itself that stops it on its way into a tank. */
export type StopRemark = 'carbon-backing' | 'infrared'

/** What has to be known of a roll before it goes into a tank. */
export interface RollToLoad {
  readonly number: string
  readonly process: FilmProcess
  /** Whose it is; null for one's own, also a found one. */
  readonly whose: string | null
  readonly remarks: readonly string[]
}

const WORDS: Readonly<Record<Recipe['process'], string>> = {
  'black-and-white': 'black-and-white',
  'black-and-white-reversal': 'black-and-white',
  'colour-negative': 'colour negative',
  'colour-reversal': 'colour reversal',
}

/** Whether a film is made for this list; black-and-white film may become a negative or a slide. */
export const madeFor = (film: FilmProcess, list: Recipe['process']): boolean => WORDS[film] === WORDS[list]

/**
 * Whether a roll may go through a list of baths: `fits` where it is made for it, `crosses` where the person wrote why
 * their own film goes through another. Refused: the wrong process without a reason, and somebody else's film in the
 * wrong process whatever the reason. A film that was found belongs to whoever found it, unless it says whose it is.
 */
export function throughList(
  { number, process, whose }: RollToLoad,
  list: Recipe['process'],
  reason: string,
): Result<'fits' | 'crosses'> {
  if (madeFor(process, list)) return ok('fits')
  const facts = { number, film: WORDS[process], list: WORDS[list] }
  if (whose !== null) return failed(problem('loads.wrong-process-of-others', { ...facts, person: whose }))
  return reason.trim() === '' ? failed(problem('loads.wrong-process', facts)) : ok('crosses')
}

const STOPS = {
  'carbon-backing': 'loads.carbon-backing',
  infrared: 'loads.infrared',
} as const

/** The first thing about a roll that stops it until the person has confirmed that it is taken care of. */
export function stopOf({ number, remarks }: RollToLoad, confirmed: readonly StopRemark[]): Result<null> {
  const stop = (['carbon-backing', 'infrared'] as const).find(
    (one) => remarks.includes(one) && !confirmed.includes(one),
  )
  return stop === undefined ? ok(null) : failed(problem(STOPS[stop], { number }))
}
