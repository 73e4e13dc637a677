import type { Celsius, Seconds } from '../../kernel/index.js'
import { counted } from '../counted.js'
import type { Writer } from '../writer.js'

type Difference = { name: string; temperature: Celsius; other: string; otherTemperature: Celsius; by: number }
type Window = { name: string; temperature: Celsius; from: Celsius; to: Celsius }

/** Sentences about the plan of a tank and about a tank under way. */
export const scoreWords = {
  'score.title': (p: { name: string }) => `The score: ${p.name}`,
  'score.band': (p: { time: Seconds | number; temperature: Celsius }, w: Writer) =>
    `${w.time(p.time)} at ${w.temperature(p.temperature)}`,
  'score.description': (p: { baths: number; length: Seconds; hands: Seconds }, w: Writer) =>
    `${counted(p.baths, 'bath')} in ${w.time(p.length)}; hands are busy for ${w.time(p.hands)} of it.`,
  'score.legend.change': (_: object) => 'bath change: drain, pour, opening turns',
  'score.legend.turn': (_: object) => 'turns',
  'score.legend.area': (_: object) => 'area is development; dashed, the plan',
  'score.hands': (_: object) => 'Hands',
  'score.warning.bath-differs': (p: Difference, w: Writer) =>
    `${p.name} at ${w.temperature(p.temperature)} is ${w.difference(p.by)} from ${p.other} at ${w.temperature(p.otherTemperature)}: usable.`,
  'score.warning.bath-too-far': (p: Difference, w: Writer) =>
    `${p.name} at ${w.temperature(p.temperature)} is ${w.difference(p.by)} from ${p.other} at ${w.temperature(p.otherTemperature)}: you take the risk of wrinkled gelatin.`,
  'score.warning.chain-too-long': (p: { first: string; last: string; by: number }, w: Writer) =>
    `From ${p.first} to ${p.last} the film goes through ${w.difference(p.by)} in all: you take the risk of wrinkled gelatin.`,
  'score.warning.outside-window': (p: Window, w: Writer) =>
    `${p.name} at ${w.temperature(p.temperature)} is outside its window of ${w.temperature(p.from)} to ${w.temperature(p.to)}.`,
  'score.warning.colour-cast-likely': (p: Window, w: Writer) =>
    `${p.name} at ${w.temperature(p.temperature)} is outside ${w.temperature(p.from)} to ${w.temperature(p.to)}: a colour cast is likely. Its time is not moved.`,
  'score.warning.fixer-finished': (p: { needed: Seconds; most: Seconds }, w: Writer) =>
    `This fixer would need ${w.time(p.needed)}; past ${w.time(p.most)} it is finished. Mix fresh.`,

  'run.changed.pour-out-earlier': (p: { by: Seconds; temperature: Celsius; expected: Celsius }, w: Writer) =>
    `${w.temperature(p.temperature)} where ${w.temperature(p.expected)} was expected: pour out ${w.span(p.by)} sooner.`,
  'run.changed.pour-out-later': (p: { by: Seconds; temperature: Celsius; expected: Celsius }, w: Writer) =>
    `${w.temperature(p.temperature)} where ${w.temperature(p.expected)} was expected: pour out ${w.span(p.by)} later.`,
  'run.reading.read-again': (p: { temperature: Celsius; expected: Celsius }, w: Writer) =>
    `${w.temperature(p.temperature)} is far from the expected ${w.temperature(p.expected)}. Stir, wait, and read again.`,
  'run.reading.confirm-shift': (p: { shift: number }, w: Writer) =>
    `This would move the pour-out by ${w.span(Math.abs(p.shift))}. Hold to take it.`,
  'run.deviation.poured-out-late': (p: { name: string; by: Seconds; gained: number | null }, w: Writer) =>
    `${p.name} came out ${w.span(p.by)} late${gain(p.gained, w)}.`,
  'run.deviation.poured-out-early': (p: { name: string; by: Seconds; gained: number | null }, w: Writer) =>
    `${p.name} came out ${w.span(p.by)} early${gain(p.gained, w)}.`,
  'run.deviation.poured-in-late': (p: { name: string; by: Seconds }, w: Writer) =>
    `${p.name} went in ${w.span(p.by)} late.`,
  'run.deviation.skipped': (p: { name: string; reason: string }) =>
    p.reason === '' ? `${p.name} was left out.` : `${p.name} was left out: ${p.reason}.`,
  'run.deviation.fixer-finished': (p: { name: string; needed: Seconds; most: Seconds }, w: Writer) =>
    `${p.name} would have needed ${w.time(p.needed)}; past ${w.time(p.most)} it is finished. Fix again in fresh fixer.`,
  'run.deviation.reading-not-counted': (p: { temperature: Celsius; expected: Celsius }, w: Writer) =>
    `A reading of ${w.temperature(p.temperature)} was not counted; ${w.temperature(p.expected)} was expected.`,
  'run.deviation.pressed-twice': (p: { name: string; times: number }) =>
    `A pour of ${p.name} was confirmed ${counted(p.times, 'more time', 'more times')}; the earliest counts.`,
  'run.deviation.taken-back': (p: { times: number }) => `Taken back: ${counted(p.times, 'entry', 'entries')}.`,
  'run.deviation.abandoned': (p: { reason: string }) => `Given up: ${p.reason}.`,
  'run.equivalent': (p: { fraction: number; low: number; high: number; byTheClock?: boolean }, w: Writer) =>
    `Development was ${w.percent(p.fraction)} of the plan, between ${w.percent(p.low)} and ${w.percent(p.high)} by the thermometer${p.byTheClock ? ' and by what the times leave open' : ''}.`,

  'caution.dark-until-fixed': (_: object) => 'Lid stays on until the film has been two minutes in the fixer.',
  'caution.never-into-developer': (_: object) =>
    'A drop of this in the developer spoils it: own funnel, own graduate, rinsed hands.',
  'caution.acid-splash': (_: object) => 'Acid: goggles when you mix it, water on splashes.',
  'caution.bleach-oxidiser': (_: object) => 'Bleach stains and oxidises: goggles, gloves, open window.',
  'caution.bleach-never-meets-fixer': (_: object) => 'Bleach and fixer never meet in one vessel or jug.',
  'caution.no-rinse-between': (_: object) => 'No water between this bath and the next.',
  'caution.keep-temperature': (_: object) => 'The temperature is the recipe: water jacket, thermometer, no guessing.',
  'caution.do-not-touch-emulsion': (_: object) => 'Wet emulsion takes every touch; hold film by its edges.',
  'caution.even-light': (_: object) => 'Light both sides evenly; keep the lamp dry.',
  'caution.gloves': (_: object) => 'Gloves: colour developers and bleaches make skin allergic.',
} as const

const gain = (gained: number | null, w: Writer): string =>
  gained === null ? '' : `: ${w.percent(Math.abs(gained))} ${gained > 0 ? 'more' : 'less'} development`
