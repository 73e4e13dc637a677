import { type Celsius, type Problem, problem } from '../../kernel/index.js'
import type { Bath } from '../recipe/definition.js'
import { develops, hasFixedTime, isBath } from '../recipe/kinds.js'
import type { ScoreWarning, Tank } from './definition.js'

/**
 * How far baths may lie apart, °C. Said from 2 °F, the limit of US Army SS0520-5; refused from 5 °F, above which
 * SS0509-8 fears wrinkled gelatin. (A later measurement found none below 73 °C; the old limits cost little.)
 */
export const SPREAD = { said: 1.1, refused: 2.8 } as const

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
  const windows = measured.flatMap((one) => outsideWindow(tank.tank, one))
  const judged = measured.filter(({ bath }) => bath.window === null)
  const pairs = pairsApart(tank.tank, judged)
  const tooFar = pairs.find((pair) => pair.code === 'bath-too-far')
  const chain = tooFar === undefined ? chainTooLong(tank.tank, judged) : null
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
  const { from, to } = bath.window
  if (temperature >= from - SLACK && temperature <= to + SLACK) return []
  const code = hasFixedTime(bath) ? 'colour-cast-likely' : 'outside-window'
  return [{ code, tank, name: bath.name, temperature, from, to }]
}

/** Of temperatures that went through °F. */
const SLACK = 1e-6

type Pair = Extract<ScoreWarning, { code: 'bath-differs' | 'bath-too-far' }>

/** Each bath with whichever of developer and bath before it lies farther off. */
function pairsApart(tank: string, baths: readonly Measured[]): Pair[] {
  const developer = baths.find(({ bath }) => develops(bath))
  return baths.flatMap((one, i) => {
    const others = [developer, baths[i - 1]].filter((other) => other !== undefined && other !== one) as Measured[]
    const apart = others.map((other) => ({ other, by: Math.abs(one.temperature - other.temperature) }))
    const worst = apart.sort((a, b) => b.by - a.by)[0]
    if (worst === undefined || worst.by < SPREAD.said - SLACK) return []
    return [pairOf(tank, one, worst.other, worst.by)]
  })
}

const pairOf = (tank: string, one: Measured, other: Measured, by: number): Pair => ({
  code: by < SPREAD.refused - SLACK ? 'bath-differs' : 'bath-too-far',
  tank,
  name: one.bath.name,
  temperature: one.temperature,
  other: other.bath.name,
  otherTemperature: other.temperature,
  by,
})

type Chain = Extract<ScoreWarning, { code: 'chain-too-long' }>

/** The two baths farthest apart, whatever lies between. */
function chainTooLong(tank: string, baths: readonly Measured[]): Chain | null {
  const pairs = baths.flatMap((last, i) => baths.slice(0, i).map((first) => ({ first, last })))
  const by = ({ first, last }: (typeof pairs)[number]) => Math.abs(first.temperature - last.temperature)
  const worst = pairs.sort((a, b) => by(b) - by(a))[0]
  if (worst === undefined || by(worst) < SPREAD.refused - SLACK) return null
  return { code: 'chain-too-long', tank, first: worst.first.bath.name, last: worst.last.bath.name, by: by(worst) }
}

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
