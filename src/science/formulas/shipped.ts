import { celsius } from '../../kernel/index.js'
import type { BathFormula } from './recipe.js'

const DEVELOPER_WATER = { low: celsius(32), high: celsius(52) }
const FIXER_WATER = { low: celsius(32), high: celsius(40) }
const TAP = { low: celsius(15), high: celsius(27) }
const MEMORY = 'from memory; standard textbooks hold it, but no page was at hand'
const BOOK = 'The Darkroom Cookbook, 3rd ed. 2008, p. 268'

/** Generic baths by composition: starting points to be edited. Those from memory say so. */
export const SHIPPED_FORMULAS: readonly BathFormula[] = [
  {
    id: 'metol-sulfite',
    name: 'Metol–sulfite developer',
    role: 'developer',
    additions: [
      { salt: 'metol', gramsPerLitre: 7.5 },
      { salt: 'sulfite-anhydrous', gramsPerLitre: 100 },
    ],
    waterFirst: 0.75,
    temperature: DEVELOPER_WATER,
    origin: 'practice',
    tag: 'memory',
    source: MEMORY,
  },
  {
    id: 'metol-hydroquinone-borax',
    name: 'Metol–hydroquinone–borax developer',
    role: 'developer',
    additions: [
      { salt: 'metol', gramsPerLitre: 2 },
      { salt: 'sulfite-anhydrous', gramsPerLitre: 100 },
      { salt: 'hydroquinone', gramsPerLitre: 5 },
      { salt: 'borax', gramsPerLitre: 2 },
    ],
    waterFirst: 0.75,
    temperature: DEVELOPER_WATER,
    origin: 'practice',
    tag: 'memory',
    source: MEMORY,
  },
  {
    id: 'plain-hypo',
    name: 'Plain hypo fixer',
    role: 'fixer',
    additions: [{ salt: 'hypo', gramsPerLitre: 240 }],
    waterFirst: 0.6,
    temperature: FIXER_WATER,
    origin: 'practice',
    tag: 'memory',
    source: MEMORY,
  },
  {
    id: 'acid-hardening-fixer',
    name: 'Acid hardening fixer with boric acid',
    role: 'fixer',
    additions: [
      { salt: 'hypo', gramsPerLitre: 240 },
      { salt: 'sulfite-anhydrous', gramsPerLitre: 15 },
      { salt: 'acetic-acid', millilitresPerLitre: 48, percent: 28 },
      { salt: 'boric-acid', gramsPerLitre: 7.5 },
      { salt: 'potassium-alum', gramsPerLitre: 15 },
    ],
    waterFirst: 0.6,
    temperature: FIXER_WATER,
    origin: 'practice',
    tag: 'memory',
    source: MEMORY,
  },
  {
    id: 'citric-stop',
    name: 'Citric acid stop',
    role: 'stop',
    additions: [{ salt: 'citric-acid', gramsPerLitre: 15 }],
    waterFirst: 0.75,
    temperature: TAP,
    origin: 'sheet',
    tag: 'source',
    source: BOOK,
  },
  {
    id: 'acetic-stop',
    name: 'Acetic acid stop',
    role: 'stop',
    additions: [{ salt: 'acetic-acid', millilitresPerLitre: 48, percent: 28 }],
    waterFirst: 0.75,
    temperature: TAP,
    origin: 'practice',
    tag: 'memory',
    source: MEMORY,
  },
  {
    id: 'sulfite-wash-aid',
    name: 'Sulfite wash aid',
    role: 'wash-aid',
    additions: [{ salt: 'sulfite-anhydrous', gramsPerLitre: 20 }],
    waterFirst: 0.75,
    temperature: TAP,
    origin: 'practice',
    tag: 'practice',
    source: 'common practice',
  },
]
