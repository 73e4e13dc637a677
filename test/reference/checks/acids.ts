import { expectOk, millilitres } from '../../../src/kernel/index.js'
import {
  ACIDS,
  type AcidName,
  AIR_CHANGES,
  acidToReach,
  doubtsAbout,
  EXPOSURES,
  fanFor,
  formsAt,
  mixingSheet,
  molarMass,
  pHOf,
  SHIPPED_FORMULAS,
  type Solution,
  stopMolarity,
  sulfurDioxideShare,
} from '../../../src/science/index.js'
import data from '../data/acid-base.json' with { type: 'json' }
import safety from '../data/safety.json' with { type: 'json' }
import { type Check, differences } from './check.js'

const { tolerance, pKa, ratios, carbonate, hydroxide, borax, sulfite, usedStop, stopWithCarbonate } = data
const acetic = (percent: number) => expectOk(stopMolarity(percent))
const aceticAcid = (percent: number): Solution => ({
  acids: [{ acid: 'acetic', molarity: acetic(percent) }],
  spectators: 0,
})
const vinegar = aceticAcid(data.vinegar_percent)

/** Differences in units of the last digit that is printed of each figure. */
const inDigits = (found: readonly number[], printed: readonly number[], decimals: readonly number[]) =>
  differences(found, printed).map((one, i) => one * 10 ** (decimals[i] as number))

const toReach = (bath: Solution, pHs: readonly number[]) => pHs.map((pH) => expectOk(acidToReach(bath, vinegar, pH)))

const carbonateBath = (grams: number): Solution => ({
  acids: [{ acid: 'carbonic', molarity: grams / data.carbonate_g_a_mol }],
  spectators: (2 * grams) / data.carbonate_g_a_mol,
})
const boraxMoles = borax.grams_a_litre / borax.grams_a_mol
const boraxBath: Solution = { acids: [{ acid: 'boric', molarity: 4 * boraxMoles }], spectators: 2 * boraxMoles }
const sulfiteMoles = sulfite.grams_a_litre / sulfite.grams_a_mol
const sulfiteBath: Solution = { acids: [{ acid: 'sulfurous', molarity: sulfiteMoles }], spectators: 2 * sulfiteMoles }

const constants: readonly Check[] = [
  {
    rows: [pKa.row],
    says: 'pKa of the acids',
    tolerance: tolerance.exact,
    errors: () =>
      Object.entries(pKa.acids).flatMap(([acid, values]) =>
        differences(ACIDS[acid as AcidName].pKa.slice(0, values.length), values),
      ),
  },
  {
    rows: [pKa.row],
    says: 'pKa of boric acid, between two tables',
    tolerance: tolerance.boric,
    errors: () => pKa.boric.map((value) => Math.abs(ACIDS.boric.pKa[0] - value)),
  },
  {
    rows: [ratios.row],
    says: 'pH at which base and acid stand in a ratio',
    tolerance: tolerance.forms,
    errors: () =>
      ratios.pH.map((pH, i) => {
        const [acid, base] = formsAt(ACIDS.acetic, pH) as [number, number]
        return Math.abs(Math.log10(base / acid) - Math.log10(ratios.base_over_acid[i] as number))
      }),
  },
  ...data.acetic.map(
    ({ row, percent, mol_a_litre, pH }): Check => ({
      rows: [row],
      says: `acetic acid of ${percent} % by weight and volume: mol/L and pH`,
      tolerance: tolerance.pH,
      errors: () => [Math.abs(acetic(percent) - mol_a_litre), Math.abs(expectOk(pHOf(aceticAcid(percent))) - pH)],
    }),
  ),
]

const neutralising: readonly Check[] = [
  ...carbonate.flatMap(({ row, grams_a_litre, pH, vinegar_mL, to_gas_mL }): Check[] => [
    {
      rows: [row],
      says: `vinegar for carbonate of ${grams_a_litre} g/L, closed, mL`,
      tolerance: tolerance.vinegar,
      errors: () => differences(toReach(carbonateBath(grams_a_litre), pH), vinegar_mL),
    },
    {
      rows: [row],
      says: `vinegar until all carbonate of ${grams_a_litre} g/L is gas, mL`,
      tolerance: tolerance.equivalence,
      errors: () => [
        Math.abs((1000 * carbonateBath(grams_a_litre).spectators) / acetic(data.vinegar_percent) - to_gas_mL),
      ],
    },
  ]),
  {
    rows: [hydroxide.row],
    says: 'vinegar for hydroxide to equivalence, mL',
    tolerance: tolerance.equivalence,
    errors: () => {
      const moles = hydroxide.grams_a_litre / hydroxide.grams_a_mol
      return [Math.abs((1000 * moles) / acetic(data.vinegar_percent) - hydroxide.equivalence_mL)]
    },
  },
  {
    rows: [borax.row, sulfite.row],
    says: 'vinegar for borax and for sulfite, mL',
    tolerance: tolerance.vinegar,
    errors: () => [
      ...differences(toReach(boraxBath, borax.pH), borax.vinegar_mL),
      ...differences(toReach(sulfiteBath, sulfite.pH), sulfite.vinegar_mL),
    ],
  },
  {
    rows: [sulfite.row],
    says: 'sulfite turned to bisulfite at pH 7',
    tolerance: tolerance.bisulfite,
    errors: () => [Math.abs((formsAt(ACIDS.sulfurous, 7)[1] as number) - sulfite.bisulfite_at_7)],
  },
  {
    rows: [data.sulfurDioxide.row],
    says: 'percent of sulfite that is sulfur dioxide, in the last digits printed',
    tolerance: tolerance.share,
    errors: () => {
      const { pH, percent, decimals } = data.sulfurDioxide
      return inDigits(
        pH.map((at) => 100 * expectOk(sulfurDioxideShare(at))),
        percent,
        decimals,
      )
    },
  },
  {
    rows: [usedStop.row],
    says: 'bicarbonate or carbonate for a litre of 1 % stop, in the last digits printed',
    tolerance: tolerance.share,
    errors: () => {
      const moles = acetic(usedStop.percent)
      const found = [moles * expectOk(molarMass('NaHCO3')), (moles / 2) * expectOk(molarMass('Na2CO3'))]
      return inDigits(found, [usedStop.bicarbonate_g, usedStop.carbonate_g], usedStop.decimals)
    },
  },
  {
    rows: [stopWithCarbonate.row],
    says: 'pH of 1 % stop and a carbonate bath, litre to litre',
    tolerance: tolerance.pH,
    errors: () => {
      const alkali = stopWithCarbonate.carbonate_g_a_litre / data.carbonate_g_a_mol / 2
      const pH = pHOf({
        acids: [
          { acid: 'acetic', molarity: acetic(stopWithCarbonate.percent) / 2 },
          { acid: 'carbonic', molarity: alkali },
        ],
        spectators: 2 * alkali,
      })
      return [Math.abs(expectOk(pH) - stopWithCarbonate.pH)]
    },
  },
]

export const acidsAndBases: readonly Check[] = [...constants, ...neutralising]

const { air, limits, cautions, sulfur } = safety
const formulaNamed = (id: string) => SHIPPED_FORMULAS.find((formula) => formula.id === id)

export const mixingSafety: readonly Check[] = [
  {
    rows: [air.row_navy, air.row_darkroom, air.row_fan],
    says: 'changes of air, and what a fan must move',
    tolerance: safety.tolerance.exact,
    errors: () => {
      const room = air.room_m.reduce((product, side) => product * side, 1)
      return differences(
        [
          AIR_CHANGES.mixing,
          60 / air.minutes_a_change,
          AIR_CHANGES.darkroom,
          expectOk(fanFor(room, AIR_CHANGES.darkroom)),
          expectOk(fanFor(room, AIR_CHANGES.mixing)),
        ],
        [air.mixing_an_hour, air.mixing_an_hour, air.darkroom_an_hour, ...air.fan_m3_an_hour],
      )
    },
  },
  {
    rows: limits.map(({ row }) => row),
    says: 'limits at work stand in the reference as published',
    tolerance: safety.tolerance.exact,
    errors: () =>
      limits.flatMap(({ of, figures }) => {
        const text = EXPOSURES.find((one) => one.of === of)?.limit ?? ''
        return figures.map((figure) => (new RegExp(`(^|[^0-9.])${figure}`).test(text) ? 0 : 1))
      }),
  },
  {
    rows: cautions.map(({ row }) => row),
    says: 'cautions stand at the lines that need them',
    tolerance: safety.tolerance.exact,
    errors: () =>
      cautions.map(({ formula, salt, caution }) => {
        const bath = formulaNamed(formula)
        if (bath === undefined) return 1
        const line = expectOk(mixingSheet(bath, millilitres(1000))).lines.find((one) => one.salt === salt)
        return line?.cautions.some((one) => one === caution) === true ? 0 : 1
      }),
  },
  {
    rows: [sulfur.row],
    says: 'acid fixers without sulfite, or with the acid first, are doubted',
    tolerance: safety.tolerance.exact,
    errors: () => {
      const hypo = { salt: 'hypo', gramsPerLitre: 240 }
      const acid = { salt: 'acetic-acid', millilitresPerLitre: 48, percent: 28 }
      const sulfiteFirst = { salt: 'sulfite-anhydrous', gramsPerLitre: 15 }
      const found = [
        [hypo, acid],
        [hypo, acid, sulfiteFirst],
      ].map((additions) => doubtsAbout({ additions }))
      const right = doubtsAbout({ additions: [hypo, sulfiteFirst, acid] })
      return [
        ...sulfur.doubts.map((doubt, i) => (found[i]?.some((one) => one === doubt) === true ? 0 : 1)),
        right.some((one) => sulfur.doubts.includes(one)) ? 1 : 0,
      ]
    },
  },
]
