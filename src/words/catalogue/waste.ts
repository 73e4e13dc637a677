import type { Millilitres, Seconds } from '../../kernel/index.js'
import { counted } from '../counted.js'
import type { Writer } from '../writer.js'

/** So many digits that count, without an exponent and without zeros at the end. */
const digits = (value: number, count = 3): string => {
  if (value !== 0 && Math.abs(value) < 1e-6) return 'less than 0.000001'
  const decimals = value === 0 ? 0 : Math.max(0, count - 1 - Math.floor(Math.log10(Math.abs(value))))
  return String(Number(value.toFixed(Math.min(12, decimals)))).replace(/^(.*)e-(\d+)$/, '$1 × 10^−$2')
}
const tenfold = (value: number): string =>
  value < 1e-9
    ? 'less than 1 in a thousand million'
    : value >= 1e-4
      ? digits(value)
      : `1 in ${Math.round(1 / Math.max(value, 1e-15)).toLocaleString('en-US')}`

const CANNOT = {
  'clearing-doubled':
    'No verdict: clearing took twice as long as in the fresh fixer, and film from a loaded fixer cannot be washed safe. Fix it again in fresh fixer, then wash.',
  'count-used':
    'No verdict: the fixer had met more film than it carries, and film from a loaded fixer cannot be washed safe. Fix it again in fresh fixer, then wash.',
  'silver-loaded':
    'No verdict: the fixer holds more silver than a single bath may, and film from a loaded fixer cannot be washed safe. Fix it again in fresh fixer, then wash.',
  'fixer-unknown':
    'No verdict: nothing is known of the fixer. Say its clearing test or what film it has met; after a loaded fixer no wash is enough.',
  'silver-left-in-film':
    'No verdict: the residual-silver test found silver in this film. Fix it again in fresh fixer, then wash.',
} as const

const FACTOR = { cold: 'cold water', hardener: 'hardened film', 'wash-aid': 'wash aid' } as const
const LIMIT_SAYS = { above: 'above', 'in-doubt': 'perhaps above', below: 'below' } as const
type LimitSays = keyof typeof LIMIT_SAYS

/** Sentences about washing. */
export const washWords = {
  'wash.enough': (_: object) => 'Enough, as an estimate.',
  'wash.longer': (p: { byFloor: boolean; byResidue: boolean }) =>
    `Wash longer: ${[...(p.byResidue ? ['the estimate is above the limit'] : []), ...(p.byFloor ? ['this is less than is published for such a wash'] : [])].join(', and ')}.`,
  'wash.cannot': (p: { because: keyof typeof CANNOT }) => CANNOT[p.because],
  'wash.residue': (p: { residue: number; perRoll: number; margin: number; limit: number }) =>
    `Estimated residue ${digits(p.residue)} g/m², or ${digits(p.perRoll)} mg a roll: ${
      p.margin >= 1 ? `${digits(p.margin, 2)} times below` : `${digits(1 / p.margin, 2)} times above`
    } the limit of ${p.limit} g/m².`,
  'wash.slower': (p: { slower: 'water' | 'diffusion'; needs: number }, w: Writer) =>
    p.slower === 'water'
      ? 'Changing the water decides: more changes or more flow would leave less.'
      : `Diffusion out of the gelatin decides; it alone needs ${w.time(Math.ceil(p.needs))} of moved water.`,
  'wash.water': (p: { water: Millilitres; time: Seconds }, w: Writer) =>
    `${w.volume(p.water)} of water in ${w.time(Math.round(p.time))}.`,
  'wash.floor': (p: { time: number; changes: number }, w: Writer) =>
    `Published least for such a wash: ${w.time(Math.ceil(p.time - 1e-6))}${p.changes > 0 ? `, ${counted(p.changes, 'change')}` : ''}.`,
  'wash.own-floor': (p: { time: number }, w: Writer) =>
    `Your own residual test has allowed ${w.time(Math.ceil(p.time - 1e-6))}.`,
  'wash.rinse-first': (p: { unrinsed: number; rinsed: number }) =>
    `Rinse film and walls first: the first fill would hold ${digits(p.rinsed)} g/L and not ${digits(p.unrinsed)}.`,
  'wash.working.held': (p: { fixer: number; film: number; mg: number }) =>
    `${digits(p.fixer)} g/L × ${digits(p.film)} mL in and on a roll: ${digits(p.mg)} mg`,
  'wash.working.water': (p: { part: number; mg: number }) =>
    `The water alone would leave ${tenfold(p.part)} of the first strength: ${digits(p.mg)} mg a roll`,
  'wash.working.half-life': (p: { halfLife: number }) => `Half-life in the gelatin: ${digits(p.halfLife)} s`,
  'wash.working.factor': (p: { name: keyof typeof FACTOR; factor: number }) =>
    `× ${digits(p.factor)} on it for ${FACTOR[p.name]}`,
  'wash.working.diffusion': (p: { part: number; mg: number }) =>
    `Diffusion alone would leave ${tenfold(p.part)}: ${digits(p.mg)} mg a roll`,
  'wash.working.together': (p: { mg: number }) =>
    `Both together, as the water fills up while the film gives: ${digits(p.mg)} mg a roll`,
  'wash.working.limit': (p: { limit: number }) => `At most ${p.limit} g/m²`,
  'wash.source.fixer': (_: object) => 'strength stated, or assumed at 110 g/L',
  'wash.source.water': (_: object) => '(v/(V + v))^n, exp(−Q t/V)',
  'wash.source.diffusion': (_: object) => '0.5^(t/T½), moved water only',
  'wash.source.together': (_: object) => 'two mixed parts, never below a layer by Fick’s law',
  'wash.source.stated': (_: object) => 'stated',
  'wash.source.of': (p: { source: string }) => p.source,
} as const

/** Sentences about silver in waste, and about acid on sulfite. */
export const wasteWords = {
  'silver.held': (p: { low: number; usual: number; high: number; volume: Millilitres }, w: Writer) =>
    p.low === p.high
      ? `${digits(p.usual)} g of silver in ${w.volume(p.volume)}.`
      : `About ${digits(p.usual, 2)} g of silver in ${w.volume(p.volume)}, somewhere from ${digits(p.low, 2)} to ${digits(p.high, 2)}.`,
  'silver.strength': (p: { gramsPerLitre: number; undiluted: number }) =>
    `${digits(p.gramsPerLitre)} g/L in the jug; ${digits(p.undiluted)} mg/L in what held silver when it was poured.`,
  'silver.rule': (p: { says: LimitSays; limit: number; year: number }) =>
    `${capital(LIMIT_SAYS[p.says])} ${p.limit.toFixed(1)} mg/L, where the United States call waste hazardous (40 CFR 261.24, as of ${p.year}).`,
  'silver.own': (p: { says: LimitSays; limit: number }) =>
    `${capital(LIMIT_SAYS[p.says])} your own limit of ${digits(p.limit)} mg/L.`,
  'silver.water': (p: { grams: number }) =>
    `Water in the jug changes no gram of it: ${digits(p.grams, 2)} g are handed over, and the limits are held against the part that held silver.`,
  'silver.decides': (_: object) =>
    'What may be poured away is for local codes and whoever receives it to say; a septic tank and a garden never.',
  'silver.working.rolls': (p: { volume: Millilitres; rolls: number }, w: Writer) =>
    `${w.volume(p.volume)} after ${counted(p.rolls, 'roll')}`,
  'silver.working.reading': (p: { volume: Millilitres; gramsPerLitre: number; offBy: number }, w: Writer) =>
    `${w.volume(p.volume)} read at ${digits(p.gramsPerLitre)} g/L${p.offBy > 0 ? ` ± ${digits(p.offBy)}` : ''}`,
  'silver.working.none': (p: { volume: Millilitres }, w: Writer) => `${w.volume(p.volume)} without silver`,
  'silver.source.rolls': (_: object) => '3 to 8 g/m², half to four fifths into the fixer: assumed',
  'silver.source.film': (_: object) => 'silver of your film, stated',
  'silver.source.reading': (_: object) => 'measured',
  'silver.source.none': (_: object) => 'stated',
  'fumes.before': (p: { pH: number; share: number }) =>
    `As it stands the bath is at pH ${p.pH.toFixed(1)}, and ${tenfold(p.share)} of its sulfite is sulfur dioxide.`,
  'fumes.after': (p: { pH: number; share: number; gas: number }) =>
    `With the acid it comes to pH ${p.pH.toFixed(1)}, and ${tenfold(p.share)} of it is sulfur dioxide: ${digits(p.gas)} g.`,
  'fumes.whole': (p: { grams: number; ppm: number }) =>
    `More forms as it leaves: all of the sulfite would be ${digits(p.grams)} g, ${digits(p.ppm, 2)} ppm.`,
  'fumes.room': (p: { ppm: number; quarterHour: number; dangerous: number; room: number }) =>
    `In the air of ${digits(p.room)} m³ that alone is ${digits(p.ppm, 2)} ppm; ${p.quarterHour} for a quarter of an hour is the most at work, ${p.dangerous} is dangerous to life.`,
  'fumes.never': (_: object) =>
    'Do not acidify a bath that holds sulfite: nearly every bath here does. Collect it, and ask whoever receives it.',
  'fumes.fan': (p: { fan: number; changes: number }) =>
    `For ${p.changes} changes of air an hour a fan moves ${digits(p.fan, 4)} m³/h.`,
  'fumes.working.sulfite': (p: { grams: number; molarity: number }) =>
    `${digits(p.grams)} g/L of sulfite: ${p.molarity.toFixed(4)} mol/L`,
  'fumes.working.acid': (p: { percent: number; molarity: number }) =>
    `${digits(p.percent)} % of acetic acid: ${p.molarity.toFixed(4)} mol/L`,
  'fumes.working.balance': (_: object) => 'pH where the charges balance',
  'fumes.working.ppm': (p: { grams: number; room: number }) => `${digits(p.grams)} g of gas in ${digits(p.room)} m³`,
  'fumes.source.mass': (_: object) => 'over its molar mass',
  'fumes.source.pKa': (_: object) => 'pKa 1.85 and 7.2 of sulfurous, 4.756 of acetic acid, at 25 °C',
  'fumes.source.air': (_: object) => '24.45 L a mole, nothing blown out; NIOSH pocket guide',
} as const

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
