import { type Grams, grams, ok, type Result } from '../../kernel/index.js'
import { massOutside } from './checked.js'
import { type Sourced, THERMAL_LIMITS, type VesselMaterial } from './definition.js'

/** Heat capacity of what tanks, reels and film are made of, as a part of water's 4.184 J/(g K), rounded. */
export const HEAT_OF_MATERIAL: Readonly<Record<VesselMaterial | 'film', Sourced>> = {
  steel: { value: 0.12, origin: 'assumption', source: 'handbook value of stainless steel, 0.50 J/(g K), from memory' },
  plastic: {
    value: 0.4,
    origin: 'assumption',
    source: 'handbook value of rigid plastics, 1.3 to 2 J/(g K), from memory',
  },
  glass: {
    value: 0.2,
    origin: 'assumption',
    source: 'handbook value of borosilicate glass, 0.83 J/(g K), from memory',
  },
  film: { value: 0.35, origin: 'assumption', source: 'handbook value of film base, 1.3 to 1.5 J/(g K), from memory' },
}

/** Heat that melting ice takes, kJ/kg. */
export const HEAT_OF_FUSION: Sourced = {
  value: 333.55,
  origin: 'assumption',
  source: 'handbook value of ice, from memory',
}

/** Heat that water takes by warming one degree, J/(g K), for the balance with ice. */
export const HEAT_OF_WATER: Sourced = { value: 4.184, origin: 'law', source: 'the calorie, as it is defined' }

/**
 * How many grams of water take as much heat as a thing of this material: 200 g of steel count as 24 g. Mass 0–200 kg,
 * else refused.
 */
export function worthInWater(mass: Grams, material: VesselMaterial | 'film'): Result<Grams> {
  const refused = massOutside(`A mass of ${material}`, mass, THERMAL_LIMITS.mass, 'mass')
  return refused ?? ok(grams(mass * HEAT_OF_MATERIAL[material].value))
}
