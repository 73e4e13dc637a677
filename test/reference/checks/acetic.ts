import { expectOk, millilitres } from '../../../src/kernel/index.js'
import { aceticAcid, blendOf, dilutedAcetic, weightPercent } from '../../../src/science/index.js'
import data from '../data/acetic.json' with { type: 'json' }
import { type Check, differences } from './check.js'

const { tolerance, byWeight, threeAndEight, litreOf28, army, stopPerLitre, densities } = data

/** Parts by weight are volumes of one density. */
const strengthByWeight = ([acid, water]: readonly number[]) =>
  expectOk(
    weightPercent(
      { volumes: acid as number, percent: byWeight.acid_percent, density: 1 },
      { volumes: water as number, density: 1 },
    ),
  ).percent

const rule = (density: number) => {
  const [acid, water] = threeAndEight.volumes as [number, number]
  return expectOk(
    weightPercent(
      { volumes: acid, percent: threeAndEight.acid_percent, density },
      { volumes: water, density: threeAndEight.water_density },
    ),
  )
}

export const aceticAcids: readonly Check[] = [
  {
    rows: [byWeight.row_exact],
    says: '28 + 71 and its like by weight, exactly',
    tolerance: tolerance.percent,
    errors: () => differences(byWeight.parts.map(strengthByWeight), byWeight.exact_percent),
  },
  {
    rows: [byWeight.row],
    says: 'what the book calls them',
    tolerance: tolerance.called,
    errors: () => differences(byWeight.parts.map(strengthByWeight), byWeight.called_percent),
  },
  {
    rows: [threeAndEight.row],
    says: '3 + 8 is 28 % by weight',
    tolerance: tolerance.rule,
    errors: () => [Math.abs(rule(threeAndEight.acid_density).percent - threeAndEight.called_percent)],
  },
  {
    rows: [threeAndEight.row_why],
    says: '3 + 8 by two densities, and by volumes alone, which is not 28',
    tolerance: tolerance.percent,
    errors: () => {
      const { acid_density, other_acid_density, percent, other_percent, simple_percent } = threeAndEight
      const { percent: found, byVolume } = rule(acid_density)
      return differences([found, rule(other_acid_density).percent, byVolume], [percent, other_percent, simple_percent])
    },
  },
  {
    rows: [litreOf28.row],
    says: 'a litre of 28 % from glacial acid, by weight',
    tolerance: tolerance.grams,
    errors: () => {
      const { acid, water } = expectOk(dilutedAcetic(litreOf28.from_percent, litreOf28.to_percent, millilitres(1000)))
      return differences([acid, water, acid + water], [litreOf28.acid_g, litreOf28.water_g, litreOf28.mass_g])
    },
  },
  {
    rows: [litreOf28.row],
    says: 'the same acid as a volume',
    tolerance: tolerance.glacial,
    errors: () => {
      const made = expectOk(dilutedAcetic(litreOf28.from_percent, litreOf28.to_percent, millilitres(1000)))
      return [Math.abs(made.acidVolume - litreOf28.acid_mL)]
    },
  },
  {
    rows: [army.row],
    says: '1.5 oz of 28 % with 32 oz of water',
    tolerance: tolerance.army,
    errors: () => {
      const acid = { volumes: army.acid, percent: army.percent, density: 1 }
      const { byVolume } = expectOk(weightPercent(acid, { volumes: army.water, density: 1 }))
      return [Math.abs(byVolume - army.result_percent)]
    },
  },
  {
    rows: [stopPerLitre.row],
    says: 'acid for a litre of stop bath',
    tolerance: tolerance.volume,
    errors: () =>
      stopPerLitre.from.flatMap(({ percent, mL }) =>
        differences(
          stopPerLitre.wanted_percent.map((wanted) => expectOk(blendOf(percent, 0, wanted, millilitres(1000))).strong),
          mL,
        ),
      ),
  },
  ...densities.flatMap(({ row, percent, density, grams_a_litre, mol_a_litre }): Check[] => [
    {
      rows: [row],
      says: `acetic acid of ${percent} %: density and molarity`,
      tolerance: tolerance.density,
      errors: () => {
        const found = expectOk(aceticAcid(percent))
        return differences([found.density, found.molarity], [density, mol_a_litre])
      },
    },
    {
      rows: [row],
      says: `acetic acid of ${percent} %: grams a litre`,
      tolerance: tolerance.perLitre,
      errors: () => [Math.abs(expectOk(aceticAcid(percent)).gramsPerLitre - grams_a_litre)],
    },
  ]),
]
