import { type Celsius, celsius, type Millilitres } from '../../kernel/index.js'
import { fromTheTaps, type MixingWater } from '../../science/index.js'
import type { MixAsked, MixDoubt, MixedProduct, MixStep, WaterKind } from './definition.js'

/** Wetting agent dries on the film with all that is in its water; developer is spoilt by metals and chalk first. */
export const waterKindFor = ({ role }: Pick<MixedProduct, 'role'>): WaterKind =>
  role === 'wetting-agent' ? 'distilled' : role === 'developer' ? 'filtered' : 'tap'

type Begin = MixingWater & { readonly cold: boolean }

/** The water that a mix begins with, blended from the taps to the middle of its range where both are known. */
export function waterStep(asked: MixAsked, amount: Millilitres, { low, high, cold }: Begin) {
  const middle = celsius((low + high) / 2)
  const { taps, doubts } = fromTaps(asked.taps, amount, middle)
  const step: MixStep = { do: 'water', amount, low, high, cold, kind: waterKindFor(asked.product), taps }
  return { step, doubts }
}

function fromTaps(taps: MixAsked['taps'], volume: Millilitres, wanted: Celsius) {
  const none: readonly MixDoubt[] = []
  if (taps === undefined) return { taps: null, doubts: none }
  const found = fromTheTaps({ volume, wanted, ...taps })
  if (found.ok) return { taps: found.value, doubts: none }
  return { taps: null, doubts: [{ of: 'tap-water', stops: false, sentence: found.problem.sentence } as const] }
}
