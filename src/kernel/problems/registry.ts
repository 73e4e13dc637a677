import { bathsProblems } from './registry/baths.js'
import { houseProblems } from './registry/house.js'
import { interfaceProblems } from './registry/interface.js'
import { mixingProblems } from './registry/mixing.js'
import { negativesProblems } from './registry/negatives.js'
import { quantitiesProblems } from './registry/quantities.js'
import { recipesProblems } from './registry/recipes.js'
import { runsProblems } from './registry/runs.js'
import { scoreProblems } from './registry/score.js'
import { solutionsProblems } from './registry/solutions.js'
import { thermometersProblems } from './registry/thermometers.js'
import { timesProblems } from './registry/times.js'

export type { Registered } from './registry/registered.js'

/**
 * Every expected failure in one table: code, sentence, HTTP status, exit code, help anchor. Each area has its file
 * in `registry/`. `docs/errors.md` is generated from here.
 */
export const registry = {
  ...quantitiesProblems,
  ...timesProblems,
  ...thermometersProblems,
  ...negativesProblems,
  ...houseProblems,
  ...interfaceProblems,
  ...recipesProblems,
  ...scoreProblems,
  ...runsProblems,
  ...bathsProblems,
  ...solutionsProblems,
  ...mixingProblems,
} as const

export type ProblemCode = keyof typeof registry
