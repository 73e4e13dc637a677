import type { Problem, UnitSystem } from '../../../../kernel/index.js'
import { type Recipe, recipeProblems, type Step } from '../../../../score/index.js'
import type { RecipeStatementInput } from '../../../shared/api/index.js'
import type { ListDraft } from './draft.js'
import { readStep, type StepReading } from './readStep.js'

export interface ListReading {
  /** In the order of the draft. */
  readonly steps: readonly StepReading[]
  /** Sentences about a step by its place, about the list by -1. */
  readonly troubles: ReadonlyMap<number, readonly string[]>
  /** What to keep, once nothing is wrong. */
  readonly statement: RecipeStatementInput | null
}

/** The place of what concerns the list as a whole. */
export const WHOLE_LIST = -1

/** How a list was read, and everything that is wrong with it, each at its step. */
export function readList(draft: ListDraft, units: UnitSystem): ListReading {
  const readings = draft.steps.map((step) => readStep(step, units))
  const steps = readings.flatMap(({ step }): Step[] => (step === null ? [] : [step]))
  const stated = { name: draft.name.trim(), process: draft.process, about: draft.about.trim(), steps }
  // With a step that cannot be read yet the others would be judged in places that are not theirs.
  if (steps.length < readings.length) return { steps: readings, troubles: new Map(), statement: null }
  const problems = recipeProblems({ ...stated, id: 'draft' } satisfies Recipe)
  return {
    steps: readings,
    troubles: byPlace(problems),
    // A list as it is typed is a list as it is asked for; only the score's are readonly.
    statement: problems.length === 0 ? (stated as unknown as RecipeStatementInput) : null,
  }
}

function byPlace(problems: readonly Problem[]): Map<number, string[]> {
  const troubles = new Map<number, string[]>()
  for (const found of problems) troubles.set(placeOf(found), [...(troubles.get(placeOf(found)) ?? []), found.sentence])
  return troubles
}

const placeOf = ({ field = '' }: Problem): number => Number(/^steps\[(\d+)\]/.exec(field)?.[1] ?? WHOLE_LIST)

/** How many things are still wrong: steps that cannot be read, and what does not fit. */
export const countWrong = ({ steps, troubles }: ListReading): number =>
  steps.filter(({ step }) => step === null).length + [...troubles.values()].flat().length
