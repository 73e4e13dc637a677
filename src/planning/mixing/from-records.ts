import { celsius, type Millilitres } from '../../kernel/index.js'
import { type Addition, type BathFormula, type BathRole, saltNamed } from '../../science/index.js'
import type { BenchRole } from '../contamination/order.js'
import type { MixedProduct, MixHazard, MixSource } from './definition.js'

/** A kept product, seen from here only by shape: this folder does not know the interface. */
export interface ProductShape {
  readonly id: string
  readonly name: string
  readonly role: BenchRole
  readonly form: 'liquid' | 'powder'
  readonly hazards: readonly MixHazard[]
  readonly package_parts: readonly string[]
  readonly floor_ml_per_roll: number | null
  readonly source: string
  readonly formula: {
    readonly additions: readonly {
      readonly salt: string
      readonly g_per_l: number | null
      readonly ml_per_l: number | null
      readonly percent: number | null
    }[]
    readonly water_first: number
    readonly from_c: number
    readonly to_c: number
  } | null
}

/** A package on the shelf, by shape. */
export interface PackageShape {
  readonly id: string
  readonly held: number
  readonly unit: 'ml' | 'g'
  readonly product: string
  readonly statement:
    | {
        readonly kind: 'package'
        readonly name: string
        readonly product_id: string
        readonly part: string
        readonly use_by: string | null
        readonly opened: string | null
      }
    | { readonly kind: 'bottle' | 'jug' }
}

/** A kept product as a mix takes it. */
export const productToMix = (record: ProductShape): MixedProduct => ({
  name: record.name,
  role: record.role,
  form: record.form,
  formula: formulaOf(record),
  hazards: record.hazards,
  packageParts: record.package_parts,
  floor: record.floor_ml_per_roll as Millilitres | null,
})

const BATHS: readonly BenchRole[] = ['developer', 'stop', 'fixer', 'wash-aid']
const bathRole = (role: BenchRole): BathRole => (BATHS.includes(role) ? (role as BathRole) : 'other')

function formulaOf({ name, role, source, formula }: ProductShape): BathFormula | null {
  if (formula === null) return null
  const additions = formula.additions.map(
    ({ salt, g_per_l, ml_per_l, percent }): Addition => ({
      salt,
      ...(g_per_l === null ? {} : { gramsPerLitre: g_per_l }),
      ...(ml_per_l === null ? {} : { millilitresPerLitre: ml_per_l }),
      ...(percent === null ? {} : { percent }),
    }),
  )
  const temperature = { low: celsius(formula.from_c), high: celsius(formula.to_c), source }
  return {
    ...{ id: 'own', name, role: bathRole(role), additions, waterFirst: formula.water_first, temperature },
    ...{ origin: 'sheet', tag: 'own', source },
  }
}

/** What a mix of a product may take from: its own packages, and raw chemicals by the names of their products. */
export const sourcesFor = (product: Pick<ProductShape, 'id'>, packages: readonly PackageShape[]): MixSource[] =>
  packages.flatMap(({ id, held, unit, product: named, statement }) => {
    if (statement.kind !== 'package') return []
    const own = statement.product_id === product.id
    const salt = own ? null : saltNamed(named)
    if (salt?.ok === false) return []
    const { name, use_by: useBy, opened, part } = statement
    return [{ id, name: name || named, unit, held, useBy, opened, part, salt: salt === null ? null : salt.value.id }]
  })
