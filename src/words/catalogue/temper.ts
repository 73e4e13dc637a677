import type { Celsius, Grams, Millilitres, Seconds } from '../../kernel/index.js'
import type { Writer } from '../writer.js'

const signed = (value: number, w: Writer): string => `${value < 0 ? '−' : '+'}${w.difference(Math.abs(value))}`
const figure = (value: number, digits = 2): string => String(Number(value.toFixed(digits))).replace('-', '−')

/** Sentences about warm and cold before the pour. */
export const temperWords = {
  'temper.taps': (p: { hot: Millilitres; cold: Millilitres; volume: Millilitres; wanted: Celsius }, w: Writer) =>
    `${w.volume(p.hot)} of hot and ${w.volume(p.cold)} of cold make ${w.volume(p.volume)} at ${w.temperature(p.wanted)}.`,
  'temper.taps-vessel': (p: { more: Millilitres }, w: Writer) =>
    `${w.volume(p.more)} of the hot water only warms the vessel.`,
  'temper.taps-warm-vessel': (p: { less: Millilitres }, w: Writer) =>
    `The vessel is warm and spares ${w.volume(p.less)} of hot water.`,
  'temper.taps-off': (p: { off: number }, w: Writer) =>
    `For waters this far apart it comes out ${w.difference(p.off)} colder than the rule says: read it, and add a little hot.`,
  'temper.together': (p: { temperature: Celsius }, w: Writer) =>
    `Together they stand at ${w.temperature(p.temperature)}.`,
  'temper.pour': (p: { pour: Celsius; wanted: Celsius }, w: Writer) =>
    `Pour at ${w.temperature(p.pour)}; it comes to ${w.temperature(p.wanted)} in the tank.`,
  'temper.ice': (p: { ice: Grams; water: Millilitres; from: Celsius; wanted: Celsius }, w: Writer) =>
    `${w.mass(p.ice)} of ice take ${w.volume(p.water)} from ${w.temperature(p.from)} to ${w.temperature(p.wanted)}.`,
  'temper.ice-outside': (_: object) =>
    'Ice goes around the jug or into a bag, never into a bath: its water would thin it.',
  'temper.constant-guess': (p: { value: Seconds; low: Seconds; high: Seconds }, w: Writer) =>
    `Guessed time constant ${w.time(p.value)}, anywhere from ${w.time(p.low)} to ${w.time(p.high)}. Two readings some minutes apart replace it.`,
  'temper.constant': (p: { value: Seconds; low: Seconds; high: Seconds | null }, w: Writer) =>
    p.high === null
      ? `Time constant ${w.time(p.value)}, ${w.time(p.low)} at least; the readings do not say how long at most.`
      : `Time constant ${w.time(p.value)} (${w.time(p.low)} to ${w.time(p.high)}).`,
  'temper.constant-stated': (p: { value: Seconds }, w: Writer) => `Time constant ${w.time(p.value)}, as stated.`,
  'temper.then': (p: { after: Seconds; at: Celsius; mean: Celsius }, w: Writer) =>
    `After ${w.time(p.after)} it is at ${w.temperature(p.at)}; on average ${w.temperature(p.mean)} until then.`,
  'temper.reached': (p: { wanted: Celsius; after: Seconds }, w: Writer) =>
    `It comes to ${w.temperature(p.wanted)} after ${w.time(p.after)}.`,
  'temper.start': (p: { start: Celsius; wanted: Celsius; time: Seconds }, w: Writer) =>
    `Started at ${w.temperature(p.start)} it is ${w.temperature(p.wanted)} on average over ${w.time(p.time)}.`,
  'temper.read-again': (p: { after: Seconds }, w: Writer) => `Read it again after ${w.time(p.after)}.`,
  'temper.steady': (_: object) => 'It moves by less than half a degree however long it stands.',
  'temper.cold-fixing': (p: { factor: number; temperature: Celsius }, w: Writer) =>
    p.factor === 1
      ? `At ${w.temperature(p.temperature)} fixing takes its whole time and no more.`
      : `At ${w.temperature(p.temperature)} fixing takes ${w.factor(p.factor)} times as long.`,
  'temper.cold-washing': (p: { factor: number; temperature: Celsius }, w: Writer) =>
    p.factor === 1
      ? `At ${w.temperature(p.temperature)} washing takes its whole time and no more.`
      : `At ${w.temperature(p.temperature)} washing takes ${w.factor(p.factor)} times as long.`,
  'temper.baths-fine': (_: object) => 'The baths lie close enough together.',
  'temper.bath-said': (p: { name: string; other: string; by: number }, w: Writer) =>
    `${p.name} lies ${w.difference(p.by)} from ${p.other}.`,
  'temper.bath-refused': (p: { name: string; other: string; by: number; limit: number }, w: Writer) =>
    `${p.name} lies ${w.difference(p.by)} from ${p.other}; from ${w.difference(p.limit)} gelatin can wrinkle. Bring them closer.`,
  'temper.bath-outside': (p: { name: string; temperature: Celsius; from: Celsius; to: Celsius }, w: Writer) =>
    `${p.name} at ${w.temperature(p.temperature)} is outside its own ${w.temperature(p.from)} to ${w.temperature(p.to)}.`,
  'temper.bath-chain': (p: { first: string; last: string; by: number; limit: number }, w: Writer) =>
    `From ${p.first} to ${p.last} it is ${w.difference(p.by)} in small steps; ${w.difference(p.limit)} in all is the most.`,
  // The working
  'temper.work.share': (
    p: { wanted: Celsius; hot: Celsius; cold: Celsius; volume: Millilitres; share: Millilitres },
    w: Writer,
  ) =>
    `${w.volume(p.volume)} × (${w.temperature(p.wanted)} − ${w.temperature(p.cold)}) / (${w.temperature(p.hot)} − ${w.temperature(p.cold)}) = ${w.volume(p.share)}`,
  'temper.work.vessel': (p: { worth: Grams; temperature: Celsius; more: number }, w: Writer) =>
    `the vessel counts as ${w.mass(p.worth)} of water at ${w.temperature(p.temperature)}: ${figure(p.more, 1)} mL of hot`,
  'temper.work.off': (p: { off: number }, w: Writer) =>
    `by the whole balance of heat the rule is off by ${signed(p.off, w)}`,
  'temper.work.thing': (p: { worth: Grams; temperature: Celsius }, w: Writer) =>
    `${w.mass(p.worth)} of water at ${w.temperature(p.temperature)}`,
  'temper.work.material': (p: { mass: Grams; material: string; factor: number; worth: Grams }, w: Writer) =>
    `${w.mass(p.mass)} of ${p.material} × ${p.factor} = ${w.mass(p.worth)} of water`,
  'temper.work.taken': (p: { worth: Grams; temperature: Celsius; taken: number; solution: Grams }, w: Writer) =>
    `${w.mass(p.worth)} / ${w.mass(p.solution)} × the way from ${w.temperature(p.temperature)} = ${signed(p.taken, w)}`,
  'temper.work.ice': (p: { fusion: number; water: number; wanted: Celsius }, w: Writer) =>
    `a gram of ice takes ${figure(p.fusion)} J by melting and ${p.water} J a degree up to ${w.temperature(p.wanted)}`,
  'temper.work.constant': (p: { value: Seconds }, w: Writer) => `τ = ${w.time(p.value)}`,
  'temper.work.law': (p: { from: Celsius; around: Celsius }, w: Writer) =>
    `T = ${w.temperature(p.around)} + (${w.temperature(p.from)} − ${w.temperature(p.around)}) × exp(−t/τ)`,
  'temper.work.fixing': (p: { factor: number }) =>
    `fixing × ${p.factor.toFixed(3)}: twice for each 10 °C (18 °F) below 20 °C (68 °F)`,
  'temper.work.washing': (p: { factor: number }) =>
    `washing × ${p.factor.toFixed(3)}: twice at 10 °C (50 °F), four times at 1.7 °C (35 °F), stated for prints`,
  'temper.work.spread': (p: { said: number; refused: number }, w: Writer) =>
    `said from ${w.difference(p.said)}, refused from ${w.difference(p.refused)}, one by one and in all`,
  'temper.source.balance': (_: object) => 'heat balance of equal heat capacities',
  'temper.source.newton': (_: object) => 'Newton’s law of cooling',
  'temper.source.iapws': (_: object) => 'IAPWS-IF97',
  'temper.source.stated': (_: object) => 'as stated',
  'temper.source.spread': (_: object) => 'US Army SS0520-5 and SS0509-8',
} as const
