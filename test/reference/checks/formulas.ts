import { expectOk, grams, millilitres } from '../../../src/kernel/index.js'
import {
  blendOf,
  hydrateFactor,
  mixingSheet,
  molarMass,
  readFormula,
  SALTS,
  SHIPPED_FORMULAS,
  SPOT_TESTS,
  stopMolarity,
  substitute,
} from '../../../src/science/index.js'
import data from '../data/formula-masses.json' with { type: 'json' }
import baths from '../data/formulas.json' with { type: 'json' }
import hydrates from '../data/hydrates.json' with { type: 'json' }
import { type Check, differences } from './check.js'

const massOf = (formula: string) => expectOk(molarMass(formula))
const atomsOf = (formula: string) => JSON.stringify(Object.entries(expectOk(readFormula(formula)).atoms).sort())

export const molarMasses: readonly Check[] = [
  ...data.rows.map(
    ({ row, masses }): Check => ({
      rows: [row],
      says: `molar masses of ${Object.keys(masses).join(', ')}`,
      tolerance: data.tolerance.mass,
      errors: () => differences(Object.keys(masses).map(massOf), Object.values(masses)),
    }),
  ),
  {
    rows: [data.ion.row],
    says: 'part of thiosulfate ion in its salts',
    tolerance: data.tolerance.share,
    errors: () =>
      data.ion.of.map(([salt, share]) => Math.abs(massOf(data.ion.ion) / massOf(salt as string) - (share as number))),
  },
  {
    rows: [data.ion.row],
    says: 'one substance written in two ways has the same atoms',
    tolerance: data.tolerance.alike,
    errors: () => data.alike.map(([one, other]) => (atomsOf(one as string) === atomsOf(other as string) ? 0 : 1)),
  },
]

const { tolerance, swaps, byActivity, misprinted, upsideDown, borate, worked } = hydrates
const factorOf = (wanted: string, have: string) => expectOk(substitute(wanted, have, grams(1))).factor
const formulaOf = (id: string) => SALTS.find((salt) => salt.id === id)?.formula as string

export const substitutions: readonly Check[] = [
  ...swaps.flatMap(({ row, wanted, have, factor, textbook }): Check[] => [
    {
      rows: [row],
      says: `${have} in place of ${wanted}`,
      tolerance: tolerance.factor,
      errors: () => [
        Math.abs(factorOf(wanted, have) - factor),
        Math.abs(expectOk(hydrateFactor(formulaOf(wanted), formulaOf(have))) - factor),
      ],
    },
    ...(textbook === undefined
      ? []
      : [
          {
            rows: [row],
            says: `${have} in place of ${wanted}, as the textbook rounds it`,
            tolerance: tolerance.textbook,
            errors: () => [Math.abs(factorOf(wanted, have) - textbook)],
          },
        ]),
  ]),
  {
    rows: [byActivity.row],
    says: 'metaborate for carbonate by activity, both ways',
    tolerance: tolerance.textbook,
    errors: () =>
      differences(
        [factorOf(byActivity.wanted, byActivity.have), factorOf(byActivity.have, byActivity.wanted)],
        [byActivity.factor, byActivity.back],
      ),
  },
  {
    rows: ['chemistry-3.borax-penta-to-deca'],
    says: 'where the textbook’s rounded row is off, molar masses answer',
    tolerance: tolerance.factor,
    errors: () =>
      misprinted.flatMap(({ wanted, have, printed, exact }) => [
        Math.abs(factorOf(wanted, have) - exact),
        // The printed figure is off by more than its own last digit: answering it would be wrong.
        Math.abs(factorOf(wanted, have) - printed) > 0.005 ? 0 : 1,
      ]),
  },
  {
    rows: ['P11'],
    says: 'P11: rows that are printed upside down are answered by molar mass',
    tolerance: tolerance.upright,
    errors: () =>
      upsideDown.flatMap(({ wanted, have, printed, exact }) => [
        Math.abs(factorOf(wanted, have) - exact),
        Math.abs(factorOf(have, wanted) - printed) < 0.01 ? 0 : 1,
      ]),
  },
  {
    rows: [borate.row],
    says: 'borax with hydroxide gives metaborate',
    tolerance: tolerance.borate,
    errors: () => {
      const each = massOf(formulaOf('borax'))
      return differences(
        [
          (borate.borax_g * borate.moles_of_hydroxide * massOf(formulaOf('hydroxide-sodium'))) / each,
          (borate.borax_g * borate.moles_of_metaborate * massOf(formulaOf('metaborate-octa'))) / each,
        ],
        [borate.hydroxide_g, borate.metaborate_octa_g],
      )
    },
  },
  {
    rows: [worked.row],
    says: 'worked examples in grams',
    tolerance: tolerance.grams,
    errors: () =>
      worked.amounts.map(({ wanted, have, grams: amount, gives }) =>
        Math.abs(expectOk(substitute(wanted, have, grams(amount))).amount - gives),
      ),
  },
]

const { sulfateStop, citricStop, plainStop, spotTest, scaled } = baths

/** Acid of a strength that a litre of stop bath takes, by volumes: what the book's recipes come to. */
const acidFor = ({ acid_percent, percent }: typeof plainStop) =>
  expectOk(blendOf(acid_percent, 0, percent, millilitres(1000))).strong
const shipped = (id: string) => SHIPPED_FORMULAS.find((formula) => formula.id === id) as (typeof SHIPPED_FORMULAS)[0]

export const bathsByWeight: readonly Check[] = [
  {
    rows: [citricStop.row],
    says: 'citric acid stop as it ships, mol/L',
    tolerance: baths.tolerance.molarity,
    errors: () => {
      const each = shipped('citric-stop').additions[0]?.gramsPerLitre as number
      return [
        Math.abs(each - citricStop.grams_a_litre),
        Math.abs(expectOk(stopMolarity(each / 10, 'citric')) - citricStop.mol_a_litre),
      ]
    },
  },
  {
    rows: [sulfateStop.row, plainStop.row],
    says: 'acetic stops: what their acid comes to in percent',
    tolerance: baths.tolerance.millilitres,
    errors: () => [sulfateStop, plainStop].map((stop) => Math.abs(acidFor(stop) - stop.acid_mL_a_litre)),
  },
  {
    rows: [sulfateStop.row],
    says: 'the acetic stop with sulfate as it ships',
    tolerance: baths.tolerance.exact,
    errors: () => {
      const { additions, waterFirst } = shipped('sulfate-stop')
      const [acid, sulfate] = additions
      return differences(
        [acid?.percent ?? 0, acid?.millilitresPerLitre ?? 0, sulfate?.gramsPerLitre ?? 0, 1000 * waterFirst],
        [
          sulfateStop.acid_percent,
          sulfateStop.acid_mL_a_litre,
          sulfateStop.sulfate_g_a_litre,
          sulfateStop.water_first_mL_a_litre,
        ],
      )
    },
  },
  {
    rows: [plainStop.row],
    says: 'the plain acetic stop as it ships',
    tolerance: baths.tolerance.exact,
    errors: () => {
      const acid = shipped('acetic-stop').additions[0]
      return differences(
        [acid?.percent ?? 0, acid?.millilitresPerLitre ?? 0],
        [plainStop.acid_percent, plainStop.acid_mL_a_litre],
      )
    },
  },
  {
    rows: [spotTest.row],
    says: 'residual-hypo spot test: silver nitrate, acid and waiting',
    tolerance: baths.tolerance.exact,
    errors: () => {
      const { silver_nitrate_g, acid_mL, total_mL, grams_a_litre, acid_mL_a_litre, wait_s } = spotTest
      const test = SPOT_TESTS.find(({ id }) => id === 'residual-hypo')
      return [
        ...differences(
          [(1000 * silver_nitrate_g) / total_mL, (1000 * acid_mL) / total_mL, test?.wait ?? 0],
          [grams_a_litre, acid_mL_a_litre, wait_s],
        ),
        ...[`${grams_a_litre} g/L`, `${acid_mL_a_litre} mL/L`].map((figure) =>
          test?.reagent.includes(figure) === true ? 0 : 1,
        ),
      ]
    },
  },
  {
    rows: [scaled.row],
    says: 'a developer scaled to 600 mL',
    tolerance: baths.tolerance.exact,
    errors: () => {
      const sheet = expectOk(mixingSheet(shipped(scaled.formula), millilitres(scaled.volume_mL)))
      const found = Object.fromEntries(sheet.lines.map(({ salt, grams: amount }) => [salt, amount as number]))
      return differences(
        Object.keys(scaled.grams).map((salt) => found[salt] as number),
        Object.values(scaled.grams),
      )
    },
  },
]
