import type { Celsius, Grams, Millilitres } from '../../kernel/index.js'
import { counted } from '../counted.js'
import type { Writer } from '../writer.js'

type Unit = 'ml' | 'g'
const amount = (value: number, unit: Unit, w: Writer): string =>
  unit === 'ml' ? w.volume(value as Millilitres) : w.mass(value as Grams)
/** `sodium carbonate, anhydrous` inside a sentence that has commas of its own. */
const named = (name: string): string => name.replace(/, (.+)$/, ' ($1)')

/** Sentences of the mix: what is chosen, what stands against it, and the sheet, step by step. */
export const shelfMixWords = {
  'mix.lead': (_: object) => 'Choose what and how much. Everything that stands against it is said before you begin.',
  'mix.no-product': (_: object) => 'No product is kept yet. Keep one from its label, or begin with one by composition.',
  'mix.ratio-hint': (p: { known: string }) =>
    p.known === '' ? 'Such as 1 + 4; empty where it is used as it is.' : `Its label knows ${p.known}.`,
  'mix.rolls-hint': (_: object) => 'Where the label asks for a least amount for each roll.',
  'mix.scale-hint': (_: object) => 'What your scale tells apart.',
  'mix.tap-hint': (_: object) => 'As it comes from the tap, such as 12 or 55.',
  'mix.not-taken': (_: object) => 'from no package: nothing is taken from the shelf',
  'mix.package': (p: { name: string; held: number; unit: Unit }, w: Writer) =>
    `${p.name}, ${amount(p.held, p.unit, w)} in it`,

  // What stands against it
  'mix.warn.short': (p: { name: string; needed: number; held: number; unit: Unit; makes: number }, w: Writer) =>
    `${named(p.name)}: ${amount(p.needed, p.unit, w)} needed, ${amount(p.held, p.unit, w)} on hand. That makes ${w.volume(p.makes as Millilitres)} at most.`,
  'mix.warn.past': (p: { name: string }) => `The package of ${named(p.name)} is past its date.`,
  'mix.warn.floor': (p: { carries: number; wanted: number }) =>
    `At this dilution it carries ${counted(p.carries, 'roll')} by the label’s least for each, not ${p.wanted}. Mix more of it, or mix it stronger.`,
  'mix.warn.no-bottle': (_: object) => 'No bottle is empty. Add one, or empty one, before you begin.',
  'mix.warn.small': (p: { room: number; volume: number }, w: Writer) =>
    `The bottles chosen hold ${w.volume(p.room as Millilitres)}; ${w.volume(p.volume as Millilitres)} are to go in. Choose another as well.`,
  'mix.warn.powder': (p: { name: string }) =>
    `${p.name} is a powder of several things: the whole package goes in. A part of it would not be the same mixture.`,
  'mix.clear': (_: object) => 'Nothing stands against it.',

  // The sheet
  'mix.title': (p: { name: string; volume: number }, w: Writer) =>
    `Mix ${w.volume(p.volume as Millilitres)} of ${p.name}`,
  'mix.sheet.lead': (_: object) => 'One after the other: tick a step when it is done, and the next one opens.',
  'mix.step.water': (p: { ml: number; low: Celsius; high: Celsius; cold: boolean }, w: Writer) =>
    `Begin with ${w.volume(p.ml as Millilitres)} of ${p.cold ? 'cold ' : ''}water, ${w.temperature(p.low)} to ${w.temperature(p.high)}${p.cold ? ': caustic goes into it' : ''}.`,
  'mix.step.taps': (p: { hot: number; cold: number; at: Celsius }, w: Writer) =>
    `From the taps: ${w.volume(p.hot as Millilitres)} hot and ${w.volume(p.cold as Millilitres)} cold come to ${w.temperature(p.at)}.`,
  'mix.step.soft': (_: object) => 'Where the tap is hard, take filtered or distilled water: lime clouds a developer.',
  'mix.step.add': (
    p: { amount: number; unit: Unit; name: string; percent: number | null; called: string | null },
    w: Writer,
  ) =>
    `${amount(p.amount, p.unit, w)} of ${named(p.name)}${p.percent === null ? '' : ` of ${p.percent}\u202f%`}${p.called === null ? '' : `, in place of ${named(p.called)}`}.`,
  'mix.step.whole': (p: { name: string }) => `The whole package of ${p.name}, little by little, stirring.`,
  'mix.step.top-up': (p: { volume: number }, w: Writer) =>
    `Top it up to ${w.volume(p.volume as Millilitres)} with cold water.`,
  'mix.step.wait': (p: { role: string; powder: boolean }) =>
    p.powder
      ? `Stir until it is clear, then wait until it stands at the temperature it is used at${p.role === 'developer' ? '; best overnight, closed' : ''}.`
      : 'Stir it, and wait until it stands at the temperature it is used at.',
  'mix.step.bottle': (p: { names: readonly string[] }) =>
    `Pour it into ${p.names.join(' and ')}, close it, and write the lot on the label.`,
  'mix.step.bleach': (_: object) => 'Never let a bleach cleaner meet acid, or any fixer: they give off poisonous gas.',
  'mix.tick.dissolved': (_: object) => 'It has wholly dissolved',
  'mix.tick.done': (_: object) => 'Done',
  'mix.finish': (_: object) => 'It is mixed: make the lot',
  'mix.finish-hint': (_: object) => 'The lot gets its code, and what went in is taken from its packages.',
  'mix.made': (p: { code: string; name: string }) =>
    `Lot ${p.code} of ${p.name} stands on the shelf. Write ${p.code} on its label.`,
  'mix.unread': (_: object) => 'Something above cannot be read yet.',
} as const
