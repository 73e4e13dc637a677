import { type Celsius, type Problem, problem } from '../../kernel/index.js'
import { judgeTemperatures, SPREAD, type SpreadPair, type SpreadVerdict } from '../../science/index.js'
import type { Bath } from '../recipe/definition.js'
import { develops, hasFixedTime, isBath } from '../recipe/kinds.js'
import type { ScoreWarning, Tank } from './definition.js'

interface Measured {
  readonly bath: Bath
  readonly temperature: Celsius
}

export interface Judged {
  readonly warnings: readonly ScoreWarning[]
  readonly refusal: Problem | null
}

/**
 * The temperatures of a tank's baths against the developer, their neighbours and the whole chain; those with a
 * window of their own against that alone. With `overridden` a refusal becomes a warning.
 */
export function judgeSpread(tank: Tank, overridden: boolean): Judged {
  const measured = tank.recipe.steps.filter(isBath).flatMap((bath): Measured[] => {
    const temperature = temperatureOf(tank, bath)
    return temperature === null ? [] : [{ bath, temperature }]
  })
  const verdict = judgeTemperatures(
    measured.map(({ bath, temperature }) => ({ temperature, develops: develops(bath), window: bath.window })),
  )
  const at = (place: number) => measured[place] as Measured
  const windows = verdict.outside.flatMap((place) => outsideWindow(tank.tank, at(place)))
  const pairs = verdict.pairs.map((pair) => pairOf(tank.tank, at(pair.bath), at(pair.other), pair))
  const chain = verdict.chain === null ? null : chainOf(tank.tank, at, verdict.chain)
  const tooFar = pairs.find((pair) => pair.code === 'bath-too-far')
  const refusal = overridden ? null : (refusalOf(tooFar) ?? refusalOfChain(chain))
  return { warnings: [...windows, ...pairs, ...(chain === null ? [] : [chain])], refusal }
}

function temperatureOf({ temperatures, development }: Tank, bath: Bath): Celsius | null {
  const measured = temperatures[bath.id]
  if (measured !== undefined) return measured
  if (bath.time.law !== 'by-developing-time' || development === null) return null
  return development.from === 'own' ? development.temperature : development.course.start
}

function outsideWindow(tank: string, { bath, temperature }: Measured): ScoreWarning[] {
  if (bath.window === null) return []
  const code = hasFixedTime(bath) ? 'colour-cast-likely' : 'outside-window'
  return [{ code, tank, name: bath.name, temperature, ...bath.window }]
}

type Pair = Extract<ScoreWarning, { code: 'bath-differs' | 'bath-too-far' }>

const pairOf = (tank: string, one: Measured, other: Measured, { by, verdict }: SpreadPair): Pair => ({
  code: verdict === 'said' ? 'bath-differs' : 'bath-too-far',
  tank,
  name: one.bath.name,
  temperature: one.temperature,
  other: other.bath.name,
  otherTemperature: other.temperature,
  by,
})

type Chain = Extract<ScoreWarning, { code: 'chain-too-long' }>

const chainOf = (
  tank: string,
  at: (place: number) => Measured,
  { first, last, by }: NonNullable<SpreadVerdict['chain']>,
): Chain => ({ code: 'chain-too-long', tank, first: at(first).bath.name, last: at(last).bath.name, by })

function refusalOf(pair: Pair | undefined): Problem | null {
  if (pair === undefined) return null
  return problem('score.bath-too-far', {
    name: pair.name,
    temperature: { celsius: pair.temperature },
    by: { degrees: pair.by },
    other: pair.other,
    otherTemperature: { celsius: pair.otherTemperature },
    limit: { degrees: SPREAD.refused },
  })
}

function refusalOfChain(chain: Chain | null): Problem | null {
  if (chain === null) return null
  const { first, last, by } = chain
  return problem('score.chain-too-long', { first, last, by: { degrees: by }, limit: { degrees: SPREAD.refused } })
}
