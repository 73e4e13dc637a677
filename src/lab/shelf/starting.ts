import { type BathFormula, SHIPPED_FORMULAS } from '../../science/index.js'
import { type ProductStatement, schemas } from '../../wire/index.js'

type Origin = ProductStatement['origin']
const ORIGIN: Readonly<Record<BathFormula['tag'], Origin>> = {
  memory: 'memory',
  own: 'own',
  practice: 'practice',
  source: 'sheet',
}

/** What each bath that is mixed by weight is, beside its formula. */
const MORE: Readonly<Record<string, Partial<ProductStatement>>> = {
  'metol-sulfite': { use: 'single-use', coefficient_class: 'unknown', hazards: ['sensitiser'] },
  'metol-hydroquinone-borax': { use: 'single-use', coefficient_class: 'metol-hydroquinone', hazards: ['sensitiser'] },
  'plain-hypo': { fixer: { salt: 'sodium-thiosulfate', alkaline: false } },
  'acid-hardening-fixer': { fixer: { salt: 'sodium-thiosulfate', alkaline: false }, hazards: ['acid', 'fumes'] },
  'citric-stop': { stop: { acid: 'citric', percent: 1.5 }, hazards: ['acid'] },
  'acetic-stop': { stop: { acid: 'acetic', percent: 1.34 }, hazards: ['acid', 'fumes'] },
}

function ofFormula({ id, name, role, additions, waterFirst, temperature, tag, source }: BathFormula): ProductStatement {
  return schemas.ProductStatement.parse({
    name,
    role,
    form: 'powder',
    use: 'reusable',
    formula: {
      additions: additions.map(({ salt, gramsPerLitre, millilitresPerLitre, percent }) => ({
        salt,
        g_per_l: gramsPerLitre ?? null,
        ml_per_l: millilitresPerLitre ?? null,
        percent: percent ?? null,
      })),
      water_first: waterFirst,
      from_c: temperature.low,
      to_c: temperature.high,
    },
    origin: ORIGIN[tag],
    source,
    ...MORE[id],
  })
}

const PRACTICE = { origin: 'practice', source: 'common practice by composition; put in what your label says' } as const
/** Concentrates and powders by composition, without any figure that only a label can give. */
const BY_COMPOSITION: readonly ProductStatement[] = [
  {
    name: 'Ammonium fixer, concentrate',
    role: 'fixer',
    use: 'reusable',
    dilutions: [
      [1, 4],
      [1, 9],
    ],
    fixer: { salt: 'ammonium-thiosulfate', alkaline: false },
    hazards: ['fumes'],
  },
  {
    name: 'Neutral ammonium fixer, concentrate',
    role: 'fixer',
    use: 'reusable',
    dilutions: [[1, 4]],
    fixer: { salt: 'ammonium-thiosulfate', alkaline: true },
  },
  {
    name: 'Metol–hydroquinone developer, stock',
    role: 'developer',
    use: 'single-use',
    dilutions: [
      [1, 1],
      [1, 3],
    ],
    coefficient_class: 'metol-hydroquinone',
    hazards: ['sensitiser'],
  },
  { name: 'Ascorbate developer, concentrate', role: 'developer', use: 'single-use', hazards: ['irritant'] },
  {
    name: 'Developer in parts A and B',
    role: 'developer',
    use: 'single-use',
    package_parts: ['A', 'B'],
    hazards: ['sensitiser'],
  },
  { name: 'Acetic stop with indicator, concentrate', role: 'stop', use: 'reusable', hazards: ['acid', 'fumes'] },
  { name: 'Wetting agent, concentrate', role: 'wetting-agent', use: 'single-use' },
].map((said) => schemas.ProductStatement.parse({ ...PRACTICE, ...said }))

/** Generic products by composition, to be kept and edited; each says where its figures are from. */
export const startingProducts = (): { products: ProductStatement[] } => ({
  products: [...BY_COMPOSITION, ...SHIPPED_FORMULAS.map(ofFormula)],
})
