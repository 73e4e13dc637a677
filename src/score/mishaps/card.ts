import type { MishapKind } from '../events/definition.js'
import type { Recipe } from '../recipe/definition.js'
import { develops, fixes, isBath } from '../recipe/kinds.js'

/** How far the film has come when something goes wrong. */
export type Stage = 'before-developer' | 'developing' | 'between' | 'fixing' | 'fixed'

/** What a card says; each code has its sentence in the catalogue of words. */
export interface MishapCard {
  readonly kind: MishapKind
  readonly stage: Stage
  /** What to do now: two or three lines, in order. */
  readonly todo: readonly string[]
  readonly means: string
  /** What becomes of the score; null where it goes on as it is. */
  readonly becomes: string | null
}

/** The stage of a film whose bath under way is step `index`; null before the first pour. */
export function stageOf({ steps }: Recipe, index: number | null): Stage {
  const first = steps.findIndex((step) => isBath(step) && develops(step))
  const lastDeveloper = steps.findLastIndex((step) => isBath(step) && (develops(step) || step.kind === 'bath-b'))
  const fix = steps.findIndex((step) => isBath(step) && fixes(step))
  if (index === null || index < first) return 'before-developer'
  if (fix !== -1 && index > lastOf(steps.length, fix, steps)) return 'fixed'
  if (index <= lastDeveloper) return 'developing'
  return fix !== -1 && index >= fix ? 'fixing' : 'between'
}

/** The last step that still belongs to the fixer: acts inside it come after it in the list. */
function lastOf(count: number, fix: number, steps: Recipe['steps']): number {
  const next = steps.findIndex((step, i) => i > fix && (isBath(step) || step.within === null))
  return (next === -1 ? count : next) - 1
}

/** The lines of each card; a stage that has its own lines is named, `any` serves the rest. */
const LINES: Readonly<Record<MishapKind, Partial<Record<Stage | 'any', number>>>> = {
  'fixer-first': { any: 3 },
  'developer-short': { any: 3 },
  'wrong-dilution': { any: 2 },
  'lid-came-off': { any: 3, fixing: 2, fixed: 2 },
  'tank-leaks': { any: 3 },
  'stop-skipped': { any: 2 },
  'power-or-phone-dead': { any: 3, fixing: 2, fixed: 2 },
}

const BECOMES: Readonly<Record<MishapKind, boolean>> = {
  'fixer-first': true,
  'developer-short': true,
  'wrong-dilution': true,
  'lid-came-off': false,
  'tank-leaks': false,
  'stop-skipped': true,
  'power-or-phone-dead': false,
}

/** The card for this second. */
export function mishapCard(kind: MishapKind, stage: Stage): MishapCard {
  const own = LINES[kind][stage]
  const base = own === undefined ? `mishap.${kind}` : `mishap.${kind}.safe`
  const count = own ?? LINES[kind].any ?? 2
  return {
    kind,
    stage,
    todo: Array.from({ length: count }, (_, i) => `${base}.do-${i + 1}`),
    means: `${base}.means`,
    becomes: BECOMES[kind] ? `mishap.${kind}.becomes` : null,
  }
}
