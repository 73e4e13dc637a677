import { mixingProblems } from './mixing.js'
import { quantitiesProblems } from './quantities.js'
import { recipesProblems } from './recipes.js'
import { scoreProblems } from './score.js'
import { thermometersProblems } from './thermometers.js'
import { timesProblems } from './times.js'

/** What a run can meet with on the phone that it runs on. Every page loads these. */
export const sinkProblems = {
  ...quantitiesProblems,
  ...timesProblems,
  ...thermometersProblems,
  ...recipesProblems,
  ...scoreProblems,
  ...mixingProblems,
} as const
