import type { z } from 'zod'
import type { TimeBasis } from '../../science/index.js'
import type {
  TankConditions as ScoreConditions,
  RunEvent as ScoreEvent,
  Recipe as ScoreRecipe,
} from '../../score/index.js'
import type { RunEvent } from './events.js'
import type { Basis, TankConditions } from './plans.js'
import type { Recipe } from './recipes.js'

/** A type without its readonly marks and units, which schemas cannot all say. */
type Loose<T> = T extends number
  ? number
  : T extends string | boolean | null | undefined
    ? T
    : T extends readonly (infer Item)[]
      ? Loose<Item>[]
      : { -readonly [Key in keyof T]: Loose<T[Key]> }
type Same<A, B> = (<T>() => T extends A ? 1 : 2) extends <T>() => T extends B ? 1 : 2 ? true : false
type Holds<T extends true> = T

/** What crosses the boundary is what the score works on: a field that one has and the other lacks does not compile. */
export type SameAsScore = [
  Holds<Same<Loose<z.output<typeof Recipe>>, Loose<ScoreRecipe>>>,
  Holds<Same<Loose<z.output<typeof Basis>>, Loose<TimeBasis>>>,
  Holds<Same<Loose<z.output<typeof TankConditions>>, Loose<ScoreConditions>>>,
  Holds<Same<Loose<z.output<typeof RunEvent>>, Loose<ScoreEvent>>>,
]
