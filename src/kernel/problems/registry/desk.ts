import { bathsProblems } from './baths.js'
import { datesProblems } from './dates.js'
import { houseProblems } from './house.js'
import { intakeProblems } from './intake.js'
import { interfaceProblems } from './interface.js'
import { loadsProblems } from './loads.js'
import { negativesProblems } from './negatives.js'
import { paperProblems } from './paper.js'
import { rollsProblems } from './rolls.js'
import { runsProblems } from './runs.js'
import { shelfProblems } from './shelf.js'
import { solutionsProblems } from './solutions.js'

/** Everything else: what is found out at a desk or by the server. New areas belong here unless a running tank needs them. */
export const deskProblems = {
  ...rollsProblems,
  ...loadsProblems,
  ...paperProblems,
  ...shelfProblems,
  ...datesProblems,
  ...intakeProblems,
  ...negativesProblems,
  ...houseProblems,
  ...interfaceProblems,
  ...runsProblems,
  ...bathsProblems,
  ...solutionsProblems,
} as const
