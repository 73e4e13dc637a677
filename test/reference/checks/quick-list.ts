import { celsius, expectOk, fahrenheit, grams, millilitres, seconds } from '../../../src/kernel/index.js'
import {
  ACIDS,
  afterChanges,
  afterDiffusion,
  areaOf,
  blended,
  blendOf,
  clearingVerdict,
  crissCross,
  dryFor,
  EXPOSURES,
  FINISHED_AT,
  fromTheTaps,
  hydrateFactor,
  mix,
  pHOf,
  RESIDUE_LIMIT,
  ROLL_AREA_CM2,
  rollsOf,
  SILVER_RULE,
  stopMolarity,
  UNKNOWN_CAPACITY,
  WASTE_RULES,
  weightPercent,
} from '../../../src/science/index.js'
import data from '../data/quick-list.json' with { type: 'json' }
import { type Check, differences } from './check.js'

const mixed = (n: number, total: number) => expectOk(mix([1, n], millilitres(total))).parts
const waterTo = (strong: number, wanted: number) => {
  const parts = expectOk(crissCross(strong, 0, wanted))
  return [parts.weak / parts.strong]
}
const blend = (...parts: [number, number][]) => [
  expectOk(blended(parts.map(([water, at]) => ({ water: grams(water), temperature: celsius(at) })))),
]
const swap = (wanted: string, have: string) => [expectOk(hydrateFactor(wanted, have))]
const parts = (volumes: number, percent: number, density: number, water: number, waterDensity: number) =>
  expectOk(weightPercent({ volumes, percent, density }, { volumes: water, density: waterDensity }))
const rule = (id: string) => WASTE_RULES.find((one) => one.id === id)?.figure

/** The forty figures by the program, in their order. */
const answers: readonly (() => readonly number[])[] = [
  () => mixed(4, 300),
  () => mixed(9, 500),
  () => mixed(25, 500),
  () => mixed(31, 1000),
  () => mixed(63, 1000),
  () => Object.values(expectOk(blendOf(99.5, 0, 28, millilitres(32)))),
  () => Object.values(expectOk(crissCross(99.5, 0, 28))),
  () => Object.values(parts(3, 99.5, 1.0477, 8, 0.9982)),
  () => waterTo(28, 1),
  () => waterTo(28, 2),
  () => waterTo(5, 1),
  () => waterTo(5, 2),
  () => [parts(1.5, 28, 1, 32, 1).byVolume],
  () => [expectOk(dryFor(10, millilitres(10)))],
  () => blend([100, 50], [100, 25]),
  () => blend([10_000, 10], [2000, 100]),
  () => blend([270, 25], [100, 95]),
  () => {
    const asked = { volume: millilitres(1000), wanted: celsius(20), hot: celsius(50), cold: celsius(12) }
    const { hot, cold } = expectOk(fromTheTaps(asked))
    return [hot, cold]
  },
  () => [68, 75, 125].map(fahrenheit),
  () => swap('Na2S2O3', 'Na2S2O3·5H2O'),
  () => swap('Na2S2O3·5H2O', 'Na2S2O3'),
  () => swap('Na2CO3', 'Na2CO3·H2O'),
  () => swap('Na2CO3', 'Na2CO3·10H2O'),
  () => swap('Na2SO3', 'Na2SO3·7H2O'),
  () => swap('Na2B4O7·10H2O', 'Na2B4O7·5H2O'),
  () => [areaOf('8x10') / 2.54 ** 2, areaOf('8x10')],
  () => [1 / expectOk(rollsOf([{ format: '4x5', count: 1 }])).exact],
  () => [expectOk(clearingVerdict(seconds(30), seconds(40))).fixFor / 40],
  () => [FINISHED_AT],
  () => [UNKNOWN_CAPACITY.acid, UNKNOWN_CAPACITY.alkaline],
  () => [RESIDUE_LIMIT.gramsPerM2, RESIDUE_LIMIT.gramsPerM2 * 100],
  () => [(RESIDUE_LIMIT.gramsPerM2 * ROLL_AREA_CM2) / 10],
  () => [1e6 * expectOk(afterDiffusion(1200, 60))],
  () => [1e6 * expectOk(afterDiffusion(300, 15))],
  () => [1e5 * expectOk(afterChanges(3, 300, 10))],
  () => [SILVER_RULE.milligramsPerLitre],
  () => [rule('very-small-generator')?.high ?? 0],
  () => [rule('sewer-acid')?.low ?? 0],
  () => [
    ACIDS.acetic.pKa[0],
    expectOk(pHOf({ acids: [{ acid: 'acetic', molarity: expectOk(stopMolarity(1)) }], spectators: 0 })),
  ],
  () => {
    const limit = EXPOSURES.find(({ of }) => of === 'sulfur dioxide')?.limit ?? ''
    return [...limit.matchAll(/(\d+) ppm/g)].map(([, figure]) => Number(figure))
  },
]

export const quickList: readonly Check[] = data.rows.map(
  ({ n, says, expected, within }): Check => ({
    rows: [`chemistry-0.${n}`],
    says: `quick list ${n}: ${says}`,
    tolerance: { value: within, reason: data.tolerance.reason },
    errors: () => differences(answers[n - 1]?.() ?? [], expected),
  }),
)
