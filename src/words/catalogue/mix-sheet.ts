import type { Celsius, Grams, Millilitres } from '../../kernel/index.js'
import type { Writer } from '../writer.js'

const WATER = { tap: 'water', filtered: 'filtered or boiled water', distilled: 'distilled water' } as const
type Water = keyof typeof WATER
type Unit = 'ml' | 'g'
const amountOf = (amount: number, unit: Unit, w: Writer): string =>
  unit === 'ml' ? w.volume(amount as Millilitres) : w.mass(amount as Grams)
const rolls = (count: number): string => (count === 1 ? '1 roll' : `${count} rolls`)

/** Sentences of a mixing sheet, beside those of baths by weight. */
export const mixSheetWords = {
  'mix.before': (_: object) => 'Before you begin:',
  'mix.water': (p: { amount: Millilitres; low: Celsius; high: Celsius; kind: Water; cold: boolean }, w: Writer) =>
    `Pour in ${w.volume(p.amount)} of ${p.cold ? 'cold ' : ''}${WATER[p.kind]}, ${w.temperature(p.low)} to ${w.temperature(p.high)}.`,
  'mix.taps': (p: { hot: Millilitres; cold: Millilitres }, w: Writer) =>
    `${w.volume(p.hot)} from the hot tap and ${w.volume(p.cold)} from the cold.`,
  'mix.add': (p: { amount: number; unit: Unit; name: string; percent: number | null }, w: Writer) =>
    `Add ${amountOf(p.amount, p.unit, w)} of ${p.name}${p.percent === null ? '' : ` of ${p.percent} %`}.`,
  'mix.add-packet': (p: { name: string }) => `Add all of a packet of ${p.name}.`,
  'mix.stands-for': (p: { wanted: string }) => `It stands for ${p.wanted}.`,
  'mix.dissolve': (_: object) => 'Stir until it has dissolved wholly; only then the next.',
  'mix.top-up': (p: { to: Millilitres; kind: Water }, w: Writer) =>
    `Top up to ${w.volume(p.to)} with ${WATER[p.kind]}.`,
  'mix.stand': (p: { hours: number }) => `Let it stand ${p.hours} hours before it is used, as is common practice.`,
  'mix.label': (_: object) => 'Fill it into its bottles and label them.',
  'mix.caution.never-with-acid-or-fixer': (_: object) =>
    'Never together with an acid or any fixer: poisonous gas. Its graduate meets nothing else.',
  'mix.caution.away-from-other-baths': (_: object) => 'Keep it away from other baths, powders and wood.',
  'mix.caution.irritates': (_: object) => 'It irritates skin and eyes: gloves.',
  'mix.caution.poisonous': (_: object) => 'Poisonous: nothing of it where people eat, children or pets come.',
  'mix.caution.no-flame': (_: object) => 'It burns: no flame, no spark, and air.',
  'mix.doubt.not-enough': (p: { name: string; wanted: number; held: number; unit: Unit }, w: Writer) =>
    `There are ${amountOf(p.held, p.unit, w)} of ${p.name}; it takes ${amountOf(p.wanted, p.unit, w)}. Mix less, or get more.`,
  'mix.doubt.none-on-hand': (p: { name: string }) => `There is no ${p.name} on the shelf.`,
  'mix.doubt.past-date': (p: { name: string; useBy: string }) =>
    `${p.name} was to be used by ${p.useBy}. Test it first.`,
  'mix.doubt.under-floor': (
    p: { rolls: number; carries: number; held: Millilitres; needed: Millilitres; volumeNeeded: Millilitres },
    w: Writer,
  ) =>
    `${rolls(p.rolls)} want ${w.volume(p.needed)} of concentrate and there are ${w.volume(p.held)} in it: enough for ${p.carries === 0 ? 'none' : rolls(p.carries)}. Mix ${w.volume(p.volumeNeeded)} at this dilution, or stronger.`,
  'mix.doubt.too-little-to-measure': (p: { name: string; amount: number }, w: Writer) =>
    `${w.volume(p.amount as Millilitres)} of ${p.name} is less than a syringe tells. Thin some of it first, or mix more.`,
} as const
