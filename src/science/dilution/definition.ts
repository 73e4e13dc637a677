import { type Millilitres, RATIO_LIMITS } from '../../kernel/index.js'

/** What one volume is made of. */
export interface Mixture {
  readonly total: Millilitres
  /** One volume a part, in the order of the ratio: concentrates first, water last. */
  readonly parts: readonly Millilitres[]
}

/** What the calculations accept; outside, they refuse. Volumes in mL, densities in g/mL, strengths in %. */
export const DILUTION_LIMITS = {
  total: { low: 1, high: 100_000 },
  /** From what a fine syringe tells: wetting agent and drops of a concentrate are stocks of less than a millilitre. */
  stock: { low: 0.1, high: 100_000 },
  part: { low: RATIO_LIMITS.low, high: RATIO_LIMITS.high },
  parts: { low: 1, high: RATIO_LIMITS.parts },
  percent: { low: 0, high: 100 },
  rolls: { low: 0.01, high: 200 },
  floor: { low: 0.1, high: 2000 },
  density: { low: 0.5, high: 2 },
  marks: { low: 0.01, high: 1000 },
} as const
