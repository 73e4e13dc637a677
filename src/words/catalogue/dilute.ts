import { type Grams, type Millilitres, writeRatio } from '../../kernel/index.js'
import type { Writer } from '../writer.js'

const parts = (of: readonly number[]): string => writeRatio({ parts: of })
const percent = (value: number): string => `${Number(value.toFixed(2))}\u202f%`
/** Parts whose names everybody knows: two are concentrate and water, three and more have letters. */
const partNames = (count: number): string[] =>
  count === 1 ? ['stock'] : count === 2 ? ['concentrate', 'water'] : [...'ABCDEFG'.slice(0, count - 1), 'water']
const volumes = (of: readonly number[], w: Writer): string =>
  of.map((one, i) => `${w.volume(one as Millilitres)} ${partNames(of.length)[i]}`).join(', ')

/** Sentences about solutions. */
export const diluteWords = {
  'dilute.mixed': (p: { parts: readonly number[]; volumes: readonly number[]; total: Millilitres }, w: Writer) =>
    `${parts(p.parts)} in ${w.volume(p.total)}: ${volumes(p.volumes, w)}.`,
  'dilute.two-readings': (p: { stronger: number }) =>
    `It is read in both ways, and one is ${Math.round((p.stronger - 1) * 100)}\u202f% stronger: see on the label which is meant, and write it with a plus.`,
  'dilute.limited': (p: { part: number; of: number }) =>
    p.of === 1 ? 'All of it is used.' : `The ${partNames(p.of)[p.part]} runs out first.`,
  'dilute.left': (p: { part: number; of: number; left: Millilitres }, w: Writer) =>
    `${w.volume(p.left)} of ${partNames(p.of)[p.part]} is left.`,
  'dilute.chain': (p: { ratios: readonly (readonly number[])[]; parts: readonly number[] }) =>
    `${p.ratios.map(parts).join(', then ')} is ${parts(p.parts)} in all.`,
  'dilute.made-up-to': (p: { parts: readonly number[]; volumes: readonly number[]; total: Millilitres }, w: Writer) =>
    `Made up to ${w.volume(p.total)}: ${volumes(p.volumes, w)}, which is ${parts(p.parts)}.`,
  'dilute.poured-into': (p: { parts: readonly number[]; volumes: readonly number[]; total: Millilitres }, w: Writer) =>
    `Poured into it: ${volumes(p.volumes, w)}, which is ${parts(p.parts)} and ${w.volume(p.total)} in all.`,
  'dilute.from-concentrate': (p: { parts: readonly number[]; volumes: readonly number[] }, w: Writer) =>
    `From the concentrate it is ${parts(p.parts)}: ${volumes(p.volumes, w)}.`,
  'dilute.from-stock': (p: { parts: readonly number[]; volumes: readonly number[]; factor: number }, w: Writer) =>
    `From the stock, ${Number(p.factor.toFixed(2))} times as thin, it is ${p.parts.length === 1 ? 'the stock itself' : parts(p.parts)}: ${w.volume(p.volumes[0] as Millilitres)} of it${p.volumes.length === 1 ? '' : ` and ${w.volume(p.volumes[1] as Millilitres)} water`}.`,
  'dilute.blend': (
    p: { strong: number; weak: number; wanted: number; strongVolume: Millilitres; weakVolume: Millilitres },
    w: Writer,
  ) =>
    `${w.volume(p.strongVolume)} of ${percent(p.strong)} and ${w.volume(p.weakVolume)} of ${p.weak === 0 ? 'water' : percent(p.weak)} make ${percent(p.wanted)}.`,
  'dilute.dry': (p: { percent: number; dissolved: Grams; total: Millilitres }, w: Writer) =>
    `${w.mass(p.dissolved)} dissolved in some four fifths of the water and made up to ${w.volume(p.total)} is ${percent(p.percent)} weight in volume.`,
  'dilute.by-weight': (p: { percent: number; dissolved: Grams; water: Grams; total: Millilitres }, w: Writer) =>
    `${w.mass(p.dissolved)} in ${w.mass(p.water)} of water is ${percent(p.percent)} by weight and makes ${w.volume(p.total)}.`,
  'dilute.acetic': (
    p: { from: number; wanted: number; acidVolume: Millilitres; acid: Grams; water: Grams; total: Millilitres },
    w: Writer,
  ) =>
    `${w.volume(p.acidVolume)} (${w.mass(p.acid)}) of ${percent(p.from)} acetic acid and ${w.mass(p.water)} of water make ${w.volume(p.total)} of ${percent(p.wanted)} by weight.`,
  'dilute.acid-caution': (_: object) =>
    'Pour the acid into the water, with goggles, gloves and air; never water into acid.',
  'dilute.floor-enough': (p: { held: Millilitres; needed: Millilitres }, w: Writer) =>
    `It holds ${w.volume(p.held)} of concentrate, and the rolls need ${w.volume(p.needed)}: enough.`,
  'dilute.floor-short': (p: { held: Millilitres; needed: Millilitres; rolls: number }, w: Writer) =>
    `It holds ${w.volume(p.held)} of concentrate, and the rolls need ${w.volume(p.needed)}. This carries ${p.rolls === 1 ? 'one roll' : `${p.rolls} rolls`}.`,
  'dilute.floor-volume': (p: { volume: Millilitres }, w: Writer) => `At this dilution they need ${w.volume(p.volume)}.`,
  // Rounded to the strong side, so that what is said is enough.
  'dilute.floor-dilution': (p: { parts: readonly number[] }) =>
    `In this volume they need ${parts(p.parts.map((part) => Math.floor(part * 10 + 1e-6) / 10))} or stronger.`,
  'dilute.floor-tank': (p: { tank: string }) => `The tank that does: ${p.tank}.`,
  'dilute.floor-other': (p: { parts: readonly number[] }) => `The dilution of the label that does: ${parts(p.parts)}.`,
  'dilute.floor-fills': (p: { fills: number }) => `Or mix this volume ${p.fills} times, with fewer rolls each time.`,
  'dilute.measure-best': (p: { name: string; fills: number; error: number }) =>
    `Best with a ${p.name}${p.fills === 1 ? '' : `, filled ${p.fills} times`}: within ${percent(p.error * 100)}.`,
  'dilute.measure-coarse': (p: { names: readonly string[] }) => `Too coarse for it: ${p.names.join(', ')}.`,
  'dilute.measure-none': (_: object) =>
    'None of these tells it to five in a hundred: use a finer syringe, or mix a weaker stock first and take more of that.',
  'dilute.measure-name': (p: { kind: 'graduate' | 'syringe'; holds: Millilitres }, w: Writer) =>
    `${p.kind} of ${w.volume(p.holds)}`,
  'dilute.drops': (p: { drops: number; volume: Millilitres }, w: Writer) => `${p.drops} drops, ${w.volume(p.volume)}.`,
  // The working
  'dilute.work.share': (p: { part: number; whole: number; total: Millilitres; volume: Millilitres }, w: Writer) =>
    `${w.volume(p.total)} × ${Number(p.part.toFixed(4))}/${Number(p.whole.toFixed(4))} = ${w.volume(p.volume)}`,
  'dilute.work.factor': (p: { factor: number }) => `thinned ${Number(p.factor.toFixed(3))} times in all`,
  'dilute.work.criss-cross': (p: { strong: number; weak: number; wanted: number }) =>
    `${percent(p.wanted)} − ${percent(p.weak)} = ${Number((p.wanted - p.weak).toFixed(3))} parts of the strong, ${percent(p.strong)} − ${percent(p.wanted)} = ${Number((p.strong - p.wanted).toFixed(3))} of the weak`,
  'dilute.work.percent': (p: { percent: number; total: Millilitres; dissolved: Grams }, w: Writer) =>
    `${Number(p.percent.toFixed(3))} g in 100 mL × ${w.volume(p.total)} = ${w.mass(p.dissolved)}`,
  'dilute.work.density': (p: { density: number }) => `density ${p.density.toFixed(4)} g/mL`,
  'dilute.work.acid-density': (p: { percent: number; density: number }) =>
    `${percent(p.percent)} acetic acid: ${p.density.toFixed(4)} g/mL`,
  'dilute.work.floor': (p: { floor: Millilitres; rolls: number; needed: Millilitres }, w: Writer) =>
    `${w.volume(p.floor)} a roll × ${Number(p.rolls.toFixed(2))} = ${w.volume(p.needed)}`,
  'dilute.work.half-mark': (p: { name: string; marks: number; fills: number; error: number }) =>
    `${p.name}: ${p.fills} × half of ${Number(p.marks.toFixed(3))} mL is ${percent(p.error * 100)}`,
  'dilute.work.drops': (p: { each: number }) => `${p.each} drops to the millilitre`,
  'dilute.source.additive': (_: object) => 'volumes taken as additive, as every label does',
  'dilute.source.stated': (_: object) => 'as stated',
  'dilute.source.practice': (_: object) => 'common practice',
  'dilute.source.assumed-graduates': (_: object) =>
    'assumption: what lies about in many darkrooms; half a mark by practice',
  'dilute.source.balance': (_: object) => 'balance of the dissolved',
  'dilute.source.density-table': (_: object) => 'organic-acid density table, 20 °C',
} as const
