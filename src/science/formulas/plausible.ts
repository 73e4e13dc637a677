import type { Origin } from '../development/index.js'
import type { BathFormula } from './recipe.js'

/** What looks wrong in a typed formula; each has its reason in the catalogue of words. */
export type Doubt =
  | 'acid-before-sulfite'
  | 'acid-fixer-without-sulfite'
  | 'alum-without-acid'
  | 'sulfite-before-metol'
  | 'agent-without-alkali'
  | 'agent-without-preservative'
  | 'bicarbonate-meets-acid'
  | 'more-than-dissolves'

const ACIDS = ['acetic-acid', 'citric-acid', 'citric-acid-mono', 'boric-acid']
const STRONG_ACIDS = ACIDS.slice(0, 3)
const HYPOS = ['hypo', 'hypo-anhydrous', 'ammonium-thiosulfate']
const SULFITES = ['sulfite-anhydrous', 'sulfite-crystal', 'metabisulfite-sodium', 'metabisulfite-potassium']
/** Ids of developing agents. */
export const AGENTS: readonly string[] = [
  'metol',
  'hydroquinone',
  'phenyl-pyrazolidinone',
  'ascorbic-acid',
  'ascorbate',
]
const ALKALIS = [
  'carbonate-anhydrous',
  'carbonate-mono',
  'carbonate-deca',
  'bicarbonate',
  'potassium-carbonate',
  'borax-anhydrous',
  'borax-penta',
  'borax',
  'metaborate-tetra',
  'metaborate-octa',
  'hydroxide-sodium',
  'hydroxide-potassium',
  // Sulfite itself is alkaline enough for metol.
  'sulfite-anhydrous',
  'sulfite-crystal',
]
/**
 * g/L at 20 °C above which a salt does not go into one bath: handbook solubilities, rounded down; those of other borax
 * are the decahydrate's by molar mass. What is not here dissolves in its own weight or so of water. No page was at hand,
 * so a sentence that leans on one of them says that it is remembered.
 */
export const SOLUBILITY = {
  origin: 'assumption',
  source: 'handbook solubilities at 20 °C, from memory, rounded down',
  gramsPerLitre: {
    'sulfite-anhydrous': 250,
    borax: 45,
    'borax-penta': 34,
    'borax-anhydrous': 23,
    hydroquinone: 55,
    metol: 45,
    'boric-acid': 45,
    bicarbonate: 90,
    'potassium-alum': 100,
    'phenyl-pyrazolidinone': 8,
  } as Readonly<Record<string, number>>,
} as const satisfies { readonly origin: Origin; readonly source: string; readonly gramsPerLitre: object }

/** g/L that dissolve, without end where nothing is remembered. */
export const dissolves = (salt: string): number => SOLUBILITY.gramsPerLitre[salt] ?? Number.POSITIVE_INFINITY

/** Doubts about a formula as typed, in the order of the mixing: none is a proof that it is wrong. */
export function doubtsAbout({ additions }: Pick<BathFormula, 'additions'>): Doubt[] {
  const ids = additions.map(({ salt }) => salt)
  const first = (names: readonly string[]) => ids.findIndex((id) => names.includes(id))
  const has = (names: readonly string[]) => first(names) >= 0
  const doubts: Doubt[] = []
  const say = (doubt: Doubt, when: boolean) => {
    if (when) doubts.push(doubt)
  }
  const fixerWithAcid = has(HYPOS) && has(STRONG_ACIDS)
  say('acid-fixer-without-sulfite', fixerWithAcid && !has(SULFITES))
  say('acid-before-sulfite', fixerWithAcid && has(SULFITES) && first(STRONG_ACIDS) < first(SULFITES))
  say('alum-without-acid', has(['potassium-alum']) && !has(ACIDS))
  say('sulfite-before-metol', has(['metol']) && has(SULFITES) && first(SULFITES) < first(['metol']))
  say('agent-without-alkali', has(AGENTS) && !has(ALKALIS))
  say('agent-without-preservative', has(AGENTS) && !has(SULFITES) && !has(['ascorbic-acid', 'ascorbate']))
  say('bicarbonate-meets-acid', has(['bicarbonate', 'carbonate-anhydrous', 'carbonate-mono']) && has(STRONG_ACIDS))
  say(
    'more-than-dissolves',
    additions.some(({ salt, gramsPerLitre = 0 }) => gramsPerLitre > dissolves(salt)),
  )
  return doubts
}
