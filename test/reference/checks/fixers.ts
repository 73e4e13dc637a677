import { expectOk, millilitres, readVolume, seconds } from '../../../src/kernel/index.js'
import {
  areaOf,
  clearingVerdict,
  FINISHED_AT,
  FIXING_FAMILIES,
  type FilmFormat,
  type FixingFamily,
  foldsToLimit,
  frameAreaOf,
  generatorOf,
  KEEPING,
  ROLL_AREA_CM2,
  rollsOf,
  rollsToSilver,
  SILVER_LIMITS,
  SILVER_RULE,
  silverAfter,
  silverHeld,
  silverOfARoll,
  twoBaths,
  UNKNOWN_CAPACITY,
  WASTE_RULES,
} from '../../../src/science/index.js'
import areas from '../data/film-areas.json' with { type: 'json' }
import fixing from '../data/fixing.json' with { type: 'json' }
import silver from '../data/silver.json' with { type: 'json' }
import { type Check, differences } from './check.js'

const IN2_CM2 = 2.54 * 2.54

interface Size {
  readonly row: string
  readonly cm2: number
  readonly in2: number
  readonly rolls: number
}

/** One area against its printed square centimetres, square inches and rolls. */
const sized = ({ row, cm2, in2, rolls }: Size, says: string, area: () => number): Check[] => [
  { rows: [row], says: `${says}: cm²`, tolerance: areas.tolerance.cm2, errors: () => [Math.abs(area() - cm2)] },
  {
    rows: [row],
    says: `${says}: in²`,
    tolerance: areas.tolerance.in2,
    errors: () => [Math.abs(area() / IN2_CM2 - in2)],
  },
  {
    rows: [row],
    says: `${says}: rolls by area`,
    tolerance: areas.tolerance.rolls,
    errors: () => [Math.abs(area() / ROLL_AREA_CM2 - rolls)],
  },
]

export const filmAreas: readonly Check[] = [
  ...areas.areas.flatMap((size) =>
    sized(size, `film of ${size.row}`, () => areaOf(size.format as FilmFormat, size.frames)),
  ),
  ...areas.framesOnly.flatMap((size) =>
    sized(size, `${size.frames} frames of 135 alone`, () => frameAreaOf(size.frames)),
  ),
  {
    rows: [areas.xRay.row],
    says: 'a litre of replenisher for 3100 square inches is one for 38.75 rolls',
    tolerance: areas.tolerance.rolls,
    errors: () => [Math.abs((areas.xRay.in2_a_litre * 6.4516) / ROLL_AREA_CM2 - areas.xRay.rolls_a_litre)],
  },
  {
    rows: [areas.convention.row],
    says: 'one roll by convention, and by its area',
    tolerance: areas.tolerance.rolls,
    errors: () => [
      Math.abs(ROLL_AREA_CM2 - areas.convention.roll_cm2),
      Math.abs(ROLL_AREA_CM2 / IN2_CM2 - areas.convention.roll_in2),
      ...areas.convention.one_roll.map(({ format, frames, count }) => {
        const piece = { format: format as FilmFormat, count, ...(frames === undefined ? {} : { frames }) }
        return Math.abs(expectOk(rollsOf([piece])).exact - 1)
      }),
    ],
  },
]

const { tolerance, exhausted, unknown, prints, shelf, ceiling } = fixing
const judged = (fresh: number, now: number, family: FixingFamily = 'ordinary') =>
  expectOk(clearingVerdict(seconds(fresh), seconds(now), family))

export const fixingBaths: readonly Check[] = [
  {
    rows: [fixing.fixing.row, fixing.slow.row],
    says: 'fix for twice the clearing time, slow emulsions for three times',
    tolerance: tolerance.exact,
    errors: () =>
      [
        [fixing.fixing.family, fixing.fixing.multiple] as const,
        ...fixing.slow.families.map((family) => [family, fixing.slow.multiple] as const),
      ].flatMap(([family, multiple]) => [
        Math.abs(judged(30, 40, family as FixingFamily).fixFor - 40 * multiple),
        Math.abs(FIXING_FAMILIES[family as FixingFamily].multiple - multiple),
      ]),
  },
  {
    rows: [exhausted.row],
    says: 'finished at exactly twice the fresh clearing time, usable until then',
    tolerance: tolerance.exact,
    errors: () => [
      Math.abs(judged(exhausted.fresh_s, 40).finishedAt - FINISHED_AT * exhausted.fresh_s),
      ...exhausted.usable_s.map((now) => (judged(exhausted.fresh_s, now).verdict === 'usable' ? 0 : 1)),
      ...exhausted.finished_s.map((now) => (judged(exhausted.fresh_s, now).verdict === 'finished' ? 0 : 1)),
      ...exhausted.usable_s.map((now) => Math.abs(judged(exhausted.fresh_s, now).fixFor - 2 * now)),
    ],
  },
  {
    rows: [fixing.twoBaths.row],
    says: 'two baths move up when the first one’s clearing time has doubled, and not before',
    tolerance: tolerance.exact,
    errors: () => {
      const { fresh_s, doubled_s } = fixing.twoBaths
      const film = [{ done: 1, capacity: 20 }]
      const early = expectOk(twoBaths(film, judged(fresh_s, doubled_s - 1)))
      const due = expectOk(twoBaths(film, judged(fresh_s, doubled_s)))
      return [early.verdict === 'carry-on' ? 0 : 1, due.verdict === 'rotate' ? 0 : 1]
    },
  },
  {
    rows: [unknown.row, ceiling.row],
    says: 'capacity of an unknown fixer, and the silver at which a bath ends',
    tolerance: tolerance.exact,
    errors: () =>
      differences(
        [
          UNKNOWN_CAPACITY.acid,
          UNKNOWN_CAPACITY.alkaline,
          SILVER_LIMITS['sodium-thiosulfate'].gramsPerLitre,
          SILVER_LIMITS['ammonium-thiosulfate'].gramsPerLitre,
        ],
        [
          unknown.acid_rolls_a_litre,
          unknown.alkaline_rolls_a_litre,
          ceiling.sodium_g_a_litre,
          ceiling.ammonium_g_a_litre,
        ],
      ),
  },
  {
    rows: [prints.row],
    says: 'prints in a gallon as prints in a litre',
    tolerance: tolerance.prints,
    errors: () => {
      const gallon = readVolume('1 gal', { system: 'us' })
      return [Math.abs(gallon.kind === 'read' ? (1000 * prints.a_gallon) / gallon.value - prints.a_litre : 1)]
    },
  },
  {
    rows: [shelf.row],
    says: 'working fixer keeps two months',
    tolerance: tolerance.months,
    errors: () => [Math.abs((KEEPING.fixer.days.full ?? 0) - (shelf.months * 365.25) / 12)],
  },
]

const { perRoll, toLimit, wholeFilm, dilution, usedFixer, weight, hazardous, generators, sewer } = silver

export const silverAndWaste: readonly Check[] = [
  {
    rows: [perRoll.row],
    says: 'silver that a roll leaves, g',
    tolerance: silver.tolerance.grams,
    errors: () => [Math.abs(expectOk(silverOfARoll(perRoll.grams_a_m2, perRoll.share)) - perRoll.grams)],
  },
  {
    rows: [perRoll.row],
    says: 'twenty rolls in a litre, g/L',
    tolerance: silver.tolerance.perLitre,
    errors: () => {
      const film = { gramsPerM2: perRoll.grams_a_m2, share: perRoll.share }
      const after = expectOk(silverAfter(perRoll.rolls_a_litre, millilitres(1000), film))
      return [after.low, after.usual, after.high].map((found) => Math.abs(found - perRoll.grams_a_litre))
    },
  },
  ...toLimit.map(
    ({ row, grams_a_m2, share, limit_g_a_litre, rolls }): Check => ({
      rows: [row],
      says: `rolls of ${grams_a_m2} g/m² until a litre holds ${limit_g_a_litre} g`,
      tolerance: silver.tolerance.rolls,
      errors: () => [Math.abs(expectOk(rollsToSilver(limit_g_a_litre, grams_a_m2, share)) - rolls)],
    }),
  ),
  {
    rows: [wholeFilm.row],
    says: 'silver of a whole roll of thin and of rich film',
    tolerance: silver.tolerance.band,
    errors: () =>
      differences(
        wholeFilm.grams_a_m2.map((each) => expectOk(silverOfARoll(each, 1))),
        wholeFilm.grams_a_roll,
      ),
  },
  {
    rows: [dilution.row],
    says: 'how many fold used fixer would have to be thinned',
    tolerance: silver.tolerance.exact,
    errors: () => [Math.abs(expectOk(foldsToLimit(dilution.grams_a_litre, dilution.limit_mg_a_litre)) - dilution.fold)],
  },
  {
    rows: [usedFixer.row],
    says: 'a litre that fixed twenty rolls of film that nobody measured holds what printers find in used fixer',
    tolerance: silver.tolerance.exact,
    errors: () => {
      const { usual } = expectOk(silverAfter(usedFixer.rolls_a_litre, millilitres(1000)))
      const [low = 0, high = 0] = usedFixer.grams_a_litre
      return [Math.max(0, low - usual, usual - high)]
    },
  },
  {
    rows: [weight.row],
    says: 'ten litres weigh eleven kilograms, and ninety a month are still very small',
    tolerance: silver.tolerance.exact,
    errors: () => [
      Math.abs((weight.litres[0] ?? 0) * weight.kg_a_litre - weight.kg),
      ...weight.litres.map((litres, i) =>
        (expectOk(generatorOf(litres * weight.kg_a_litre)) === 'very-small') === weight.very_small[i] ? 0 : 1,
      ),
    ],
  },
  {
    rows: [hazardous.row],
    says: 'silver waste is hazardous at 5.0 mg/L and above',
    tolerance: silver.tolerance.exact,
    errors: () => {
      const jug = (mg: number) =>
        expectOk(silverHeld([{ volume: millilitres(1000), silver: { by: 'reading', gramsPerLitre: mg / 1000 } }])).rule
      return [
        Math.abs(SILVER_RULE.milligramsPerLitre - hazardous.mg_a_litre),
        jug(hazardous.mg_a_litre).says === 'above' ? 0 : 1,
        jug(hazardous.mg_a_litre - 0.01).says === 'above' ? 1 : 0,
      ]
    },
  },
  {
    rows: [...generators.map(({ row }) => row), sewer.row],
    says: 'categories of generators, and the acid that a sewer takes',
    tolerance: silver.tolerance.exact,
    errors: () => [
      ...generators.flatMap(({ id, low, high }) => {
        const figure = WASTE_RULES.find((rule) => rule.id === id)?.figure
        return [Number((figure?.low ?? null) !== low), Number((figure?.high ?? null) !== high)]
      }),
      Math.abs((WASTE_RULES.find(({ id }) => id === sewer.id)?.figure.low ?? 0) - sewer.pH),
    ],
  },
]
