import type { Celsius, Grams, Millilitres } from '../../kernel/index.js'
import type { Writer } from '../writer.js'

const percent = (value: number): string => `${Number(value.toFixed(2))}\u202f%`
const digits = (value: number): string => String(Number(value.toPrecision(4)))
/** `sodium carbonate, anhydrous` inside a sentence that has commas of its own. */
const named = (name: string): string => name.replace(/, (.+)$/, ' ($1)')

type Tag = 'source' | 'memory' | 'practice' | 'own'

/** Sentences about baths mixed by weight, in the order of the work. */
export const formulaWords = {
  'formula.head': (p: { name: string; volume: Millilitres }, w: Writer) => `${p.name}, ${w.volume(p.volume)}:`,
  'formula.tag.source': (p: { source: string }) => `Figures from a page: ${p.source}.`,
  'formula.tag.memory': (_: object) => 'These figures are from memory. Hold them against a page before you trust them.',
  'formula.tag.practice': (_: object) => 'These figures are common practice.',
  'formula.tag.own': (p: { source: string }) => `These figures are your own: ${p.source}.`,
  'formula.water': (p: { water: Millilitres; low: Celsius; high: Celsius }, w: Writer) =>
    `Begin with ${w.volume(p.water)} of water, ${w.temperature(p.low)} to ${w.temperature(p.high)}.`,
  'formula.water-cold': (p: { water: Millilitres; low: Celsius; high: Celsius }, w: Writer) =>
    `Begin with ${w.volume(p.water)} of cold water, ${w.temperature(p.low)} to ${w.temperature(p.high)}: caustic goes into it.`,
  'formula.line': (
    p: { place: number; amount: Grams; name: string; wanted: string | null; called: Grams },
    w: Writer,
  ) =>
    `${p.place}. ${w.mass(p.amount)} of ${named(p.name)}${p.wanted === null ? '' : `, for ${w.mass(p.called)} of ${named(p.wanted)}`}.`,
  'formula.liquid': (p: { place: number; amount: Millilitres; name: string; percent: number | null }, w: Writer) =>
    `${p.place}. ${w.volume(p.amount)} of ${named(p.name)}${p.percent === null ? '' : ` of ${percent(p.percent)}`}.`,
  'formula.solution': (
    p: { measured: Millilitres; percent: number; grams: Grams; volume: Millilitres; keeps: boolean },
    w: Writer,
  ) =>
    `The scale does not tell so little. Make ${w.mass(p.grams)} up to ${w.volume(p.volume)}, which is ${percent(p.percent)}, and measure ${w.volume(p.measured)} of it; count that into the water.${p.keeps ? '' : ' It goes brown: make it for the day.'}`,
  'formula.companion': (p: { wanted: string; why: string }) =>
    `Goes with what stands for ${named(p.wanted)}: ${p.why}.`,
  'formula.each-dissolved': (_: object) => 'Let each dissolve wholly before the next goes in.',
  'formula.top-up': (p: { volume: Millilitres }, w: Writer) => `Make it up to ${w.volume(p.volume)} with cold water.`,

  'formula.caution.caustic-into-cold-water': (_: object) =>
    'Caustic: a little at a time into cold water, stirring; it heats by itself. Never water onto it.',
  'formula.caution.acid-into-water': (_: object) => 'The acid goes into the water, never water into the acid.',
  'formula.caution.goggles-and-gloves': (_: object) => 'Goggles and gloves.',
  'formula.caution.no-dust': (_: object) => 'Raise no dust, and breathe none.',
  'formula.caution.sensitiser': (_: object) => 'Gloves: skin can become allergic to it.',
  'formula.caution.fumes': (_: object) => 'Sulfur dioxide comes off it: air, and no acid near it.',
  'formula.caution.dissolve-before-next': (_: object) => 'Let it dissolve wholly before the next.',
  'formula.caution.pinch-of-sulfite-first': (_: object) =>
    'A pinch of the sulfite goes in before it, the rest after it.',

  'formula.doubt.acid-before-sulfite': (_: object) =>
    'The acid stands before the sulfite: without sulfite, acid throws sulfur out of a fixer. Change their order.',
  'formula.doubt.acid-fixer-without-sulfite': (_: object) => 'An acid fixer without sulfite throws sulfur before long.',
  'formula.doubt.alum-without-acid': (_: object) => 'Alum without acid comes out as a white sludge.',
  'formula.doubt.sulfite-before-metol': (_: object) =>
    'The sulfite stands before the metol, which hardly dissolves in it. Change their order, but for a pinch.',
  'formula.doubt.agent-without-alkali': (_: object) =>
    'A developing agent without any alkali develops next to nothing.',
  'formula.doubt.agent-without-preservative': (_: object) =>
    'A developing agent without sulfite goes brown within hours.',
  'formula.doubt.bicarbonate-meets-acid': (_: object) =>
    'Acid and carbonate foam over, and leave less of both: seldom what is meant.',
  'formula.doubt.more-than-dissolves': (_: object) =>
    'There is more of one salt than dissolves in so much water, by solubilities from memory: try it in a glass first.',

  // The working
  'formula.work.all-of': (p: { amount: Grams; each: number; volume: Millilitres }, w: Writer) =>
    `${w.mass(p.amount)} / ${digits(p.each)} g/L = ${w.volume(p.volume)}`,
  'formula.work.water': (p: { part: number; volume: Millilitres; water: Millilitres }, w: Writer) =>
    `${Math.round(p.part * 100)}\u202f% of ${w.volume(p.volume)} to begin with = ${w.volume(p.water)}`,
  'formula.work.warmth': (p: { low: Celsius; high: Celsius }, w: Writer) =>
    `mixing water ${w.temperature(p.low)} to ${w.temperature(p.high)}`,
  'formula.work.mass': (p: { name: string; each: number; volume: Millilitres; amount: Grams }, w: Writer) =>
    `${p.name}: ${digits(p.each)} g/L × ${w.volume(p.volume)} = ${w.mass(p.amount)}`,
  'formula.work.liquid': (p: { name: string; each: number; volume: Millilitres; amount: Millilitres }, w: Writer) =>
    `${p.name}: ${digits(p.each)} mL/L × ${w.volume(p.volume)} = ${w.volume(p.amount)}`,
  'formula.work.moles': (p: { called: Grams; have: number; wanted: number; amount: Grams }, w: Writer) =>
    `${w.mass(p.called)} × ${p.have.toFixed(3)}/${p.wanted.toFixed(3)} g/mol = ${w.mass(p.amount)}`,
  'formula.work.factor': (p: { called: Grams; factor: number; amount: Grams }, w: Writer) =>
    `${w.mass(p.called)} × ${digits(p.factor)} = ${w.mass(p.amount)}`,
  'formula.work.scale': (p: { step: number; least: number }) =>
    `the scale tells from 20 × ${digits(p.step)} g = ${digits(p.least)} g`,
  'formula.work.solution': (p: { amount: Grams; percent: number; measured: Millilitres }, w: Writer) =>
    `${w.mass(p.amount)} / ${digits(p.percent)} g in 100 mL = ${w.volume(p.measured)}`,
  'formula.source.figures': (p: { tag: Tag; source: string }) =>
    p.tag === 'memory' ? 'from memory; no page was at hand' : p.tag === 'own' ? `your own: ${p.source}` : p.source,
  'formula.source.weights': (_: object) => 'molar masses; IUPAC atomic weights of 2021',
  'formula.source.of': (p: { source: string }) => p.source,
  'formula.source.stated': (_: object) => 'as stated',
  'formula.source.scale-stated': (_: object) => 'step as stated; twenty of them by common practice',
  'formula.source.scale-assumed': (_: object) => 'step assumed; twenty of them by common practice',
  'formula.source.percent': (_: object) => 'weight in volume; what dissolves is from memory',
} as const
