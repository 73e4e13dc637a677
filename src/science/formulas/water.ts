import { type Celsius, celsius } from '../../kernel/index.js'
import type { Addition, BathRole } from './recipe.js'

/** Water that a bath is begun with, °C, and where that comes from. */
export interface MixingWater {
  readonly low: Celsius
  readonly high: Celsius
  readonly source: string
}

const water = (low: number, high: number, source: string): MixingWater => ({
  low: celsius(low),
  high: celsius(high),
  source,
})

/**
 * Water to mix in, by what is mixed. Crystals of hypo draw in heat: 240 g/L take the water some 12 °C down (heat of
 * solution 47 kJ a mole, from memory), so that what began at 40 °C comes out near the 27 that follow.
 */
export const MIXING_WATER = {
  developer: water(32, 52, 'NAVEDTRA 14209, ch. 9: 90 to 125 °F'),
  crystalsOfHypo: water(32, 40, 'at least 90 °F, Anchell 2008, p. 268; the upper end is ours'),
  fixer: water(15, 27, 'not much above 80 °F, NAVEDTRA 14209, ch. 9; the lower end is ours'),
  tap: water(15, 27, 'common practice'),
  caustic: water(5, 20, 'common practice: caustic heats its water'),
} as const satisfies Readonly<Record<string, MixingWater>>

/** Which of {@link MIXING_WATER} a bath is begun with; caustic is looked after by the mixing sheet. */
export function mixingWaterFor(role: BathRole, additions: readonly Addition[]): MixingWater {
  if (role === 'developer') return MIXING_WATER.developer
  if (additions.some(({ salt }) => salt === 'hypo')) return MIXING_WATER.crystalsOfHypo
  return role === 'fixer' ? MIXING_WATER.fixer : MIXING_WATER.tap
}
