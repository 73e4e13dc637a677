import type { Millilitres, Seconds } from '../../kernel/index.js'
import { counted } from '../counted.js'
import type { Writer } from '../writer.js'

/** At most so many decimals, without zeros at the end. */
const number = (value: number, decimals: number): string => String(Number(value.toFixed(decimals)))
const rolls = (value: number): string =>
  Number.isInteger(value) ? counted(value, 'roll') : `${number(value, 1)} rolls`

type Because = 'count' | 'clearing'
const BECAUSE: Readonly<Record<Because, (used: number) => string>> = {
  count: (used) => `${used.toFixed(2)} of the first bath’s count is used`,
  clearing: () => 'clearing in the first bath takes twice as long as when fresh',
}
const STANDING = {
  full: 'in a full bottle',
  'half-full': 'in a half-full bottle',
  tray: 'in an open tray',
  tank: 'in a covered tank',
} as const
type Standing = keyof typeof STANDING

/** Sentences about film in rolls and about fixers. */
export const fixerWords = {
  'film.count': (p: { exact: number; tally: number }) =>
    Math.abs(p.exact - p.tally) < 5e-4
      ? `${number(p.exact, 3)} ${p.tally === 1 ? 'roll' : 'rolls'}.`
      : `${number(p.exact, 3)} rolls; ${p.tally} by the tally, a begun one counting as one.`,
  'film.by-area': (p: { areaCm2: number; byArea: number }) =>
    `${number(p.areaCm2, 0)} cm² of film, its ends included: by area alone ${number(p.byArea, 2)} rolls.`,
  'film.piece': (p: { count: number; name: string; each: number; rolls: number }) =>
    `${p.count} × ${p.name} at ${number(p.each, 4)}: ${number(p.rolls, 3)}`,
  'film.source.convention': (_: object) => 'a roll by common convention',
  'film.source.frames': (_: object) => 'frames over 36',
  'film.source.area': (_: object) => 'its area over 80 square inches (516 cm²)',
  'film.source.sizes': (_: object) => 'sheets by their names; lengths of rolls assumed',
  'fix.for': (p: { time: Seconds; multiple: number; now: Seconds }, w: Writer) =>
    `Fix for ${w.time(p.time)}: ${p.multiple === 2 ? 'twice' : counted(p.multiple, 'time')} the ${w.time(p.now)} that clearing takes now.`,
  'fix.usable': (p: { grown: number; at: Seconds }, w: Writer) =>
    `Clearing takes ${p.grown.toFixed(2)} times as long as when fresh; at ${w.time(p.at)} the bath is finished.`,
  'fix.finished': (p: { grown: number }) =>
    `Finished: clearing takes ${p.grown.toFixed(2)} times as long as when fresh. Into the waste jug with it; fix in a fresh bath.`,
  'fix.left': (p: { ordinary: number; slow: number }) =>
    p.ordinary === 0
      ? `No whole roll more.`
      : `${capitalRolls(p.ordinary)} more, or ${p.slow} of a tabular or high-iodide film.`,
  'fix.decides.count': (p: { taken: number; carries: number }) =>
    `The count decides: ${number(p.taken, 2)} of ${number(p.carries, 2)} rolls are used.`,
  'fix.decides.silver': (p: { left: number; limit: number }) =>
    p.left === 0
      ? `Silver decides: it has come to ${number(p.limit, 2)} g/L.`
      : `Silver decides: after ${rolls(p.left)} more it comes to ${number(p.limit, 2)} g/L.`,
  'fix.decides.tests': (p: { left: number }) =>
    p.left === 0
      ? 'The clearing tests decide: clearing takes twice as long as when fresh.'
      : `The clearing tests decide: after ${rolls(p.left)} more clearing will take twice as long as when fresh.`,
  'fix.decides.volume': (p: { left: number }) =>
    p.left === 0
      ? 'The volume decides: the bottle does not fill the tank.'
      : `The volume decides: after ${rolls(p.left)} more the bottle no longer fills the tank.`,
  'fix.silver-now': (p: { usual: number; low: number; high: number; limit: number }) =>
    p.low === p.high
      ? `${number(p.usual, 2)} g/L of silver by now; a single bath ends at ${number(p.limit, 2)}.`
      : `About ${number(p.usual, 1)} g/L of silver by now, somewhere from ${number(p.low, 1)} to ${number(p.high, 1)}; a single bath ends at ${number(p.limit, 2)}.`,
  'fix.trend': (p: { tests: number; endsAt: number; low: number | null; high: number | null }) =>
    `By ${counted(p.tests, 'test')} clearing will have doubled at ${number(p.endsAt, 1)} rolls in all, ${interval(p.low, p.high)}.`,
  'fix.rotate': (p: { used: number; because: readonly Because[] }) =>
    `Rotate: ${p.because.map((one) => BECAUSE[one](p.used)).join(', and ')}. First bath to the waste jug, second bath first, a fresh one second.`,
  'fix.carry-on': (p: { used: number }) =>
    `Carry on: ${p.used.toFixed(2)} of the first bath’s count is used; at 1 they rotate.`,
  'fix.working.multiple': (p: { multiple: number; family: string }) => `${p.multiple} × clearing for ${p.family} film`,
  'fix.working.capacity': (p: { perLitre: number; litres: number; carries: number }) =>
    `${number(p.perLitre, 1)} rolls a litre × ${number(p.litres, 3)} L: ${number(p.carries, 2)} rolls`,
  'fix.working.taken': (p: { rolls: number; capacity: number; family: string; taken: number }) =>
    `${number(p.rolls, 3)} ${p.family} ÷ ${number(p.capacity, 2)}: ${number(p.taken, 3)} of the count`,
  'fix.working.left-by': (p: { by: string; left: number | null }) =>
    `Left by ${p.by}: ${p.left === null ? 'not known' : number(p.left, 2)}`,
  'fix.working.kind': (p: { done: number; capacity: number }) =>
    `${number(p.done, 2)} of ${number(p.capacity, 2)}: ${(p.done / p.capacity).toFixed(3)}`,
  'fix.source.multiple': (_: object) => 'NAVEDTRA 14209, p. 249; three times by common practice',
  'fix.source.twice': (_: object) => 'finished at twice: NAVEDTRA 14209, p. 249',
  'fix.source.capacity': (_: object) => 'the label; without one 20 (acid) or 25 (alkaline), textbook 2008, p. 108',
  'fix.source.family': (_: object) => 'assumption, until a label says otherwise',
  'fix.source.own-family': (_: object) => 'stated',
  'fix.source.ordinary': (_: object) => 'by definition',
  'fix.source.count': (_: object) => 'the count above',
  'fix.source.silver': (_: object) => '3 to 8 g/m², half to four fifths of it: assumed; limit of a compliance guide',
  'fix.source.tests': (_: object) => 'a straight line; interval by Fieller, 95 in a hundred',
  'fix.source.volume': (_: object) => 'fill after fill, less what each carries out',
  'fix.source.two-baths': (_: object) => 'what the sheet lets the bath carry of each alone',
} as const

const capitalRolls = (count: number): string => {
  const text = counted(count, 'roll')
  return text.charAt(0).toUpperCase() + text.slice(1)
}

function interval(low: number | null, high: number | null): string {
  if (low === null && high === null) return 'with no interval: the tests are too few or too scattered'
  if (high === null) return `${number(low as number, 1)} at the soonest`
  return `between ${number(low ?? 0, 1)} and ${number(high, 1)}`
}

/** Sentences about the life of baths: age, replenishing, stop baths. */
export const bathLifeWords = {
  'life.keeps': (p: { used: number; days: number; state: Standing }, w: Writer) =>
    `${w.percent(p.used)} of its life is used. ${STANDING[p.state].replace(/^i/, 'I')} it keeps ${daysOf(p.days)} more.`,
  'life.past': (p: { used: number }, w: Writer) => `Past: ${w.percent(p.used)} of its life is used. Mix it fresh.`,
  'life.stretch': (p: { days: number; life: number; state: Standing; used: number }) =>
    `${number(p.days, 1)} of ${number(p.life, 1)} days ${STANDING[p.state]}: ${p.used.toFixed(3)}`,
  'life.sum': (p: { used: number }) => `Together ${p.used.toFixed(3)}; at 1 it is past`,
  'life.source.stated': (_: object) => 'stated',
  'life.source.practice': (_: object) => 'common practice',
  'life.source.law': (_: object) => 'parts of a life add up',
  'replenish.settles': (p: { before: number; after: number }) =>
    `It settles at ${number(p.before, 3)} g/L before topping up, ${number(p.after, 3)} g/L after.`,
  'replenish.way': (p: { rolls: number; part: number }, w: Writer) =>
    `${number(Math.ceil(p.rolls - 1e-9), 0)} rolls bring it all but ${w.percent(p.part)} of the way.`,
  'replenish.after': (p: { rolls: number; strength: number }) =>
    `After ${rolls(p.rolls)} it holds ${number(p.strength, 3)} g/L.`,
  'replenish.book': (
    p: { volume: Millilitres; added: Millilitres; discarded: Millilitres; carriedOut: Millilitres },
    w: Writer,
  ) =>
    `By the book ${w.volume(p.volume)} are in it: ${w.volume(p.added)} added, ${w.volume(p.discarded)} discarded, ${w.volume(p.carriedOut)} carried out.`,
  'replenish.working.step': (p: { perRoll: number; strength: number }) =>
    `A roll ${p.perRoll < 0 ? 'uses up' : 'gives'} ${number(Math.abs(p.perRoll), 4)} g: ${number(p.strength, 4)} g/L`,
  'replenish.working.kept': (p: { kept: number }) => `Topping up keeps ${number(p.kept, 4)} of the bath`,
  'replenish.working.plateau': (p: { replenisher: number; share: number; before: number }) =>
    `${number(p.replenisher, 3)} ${p.share < 0 ? '−' : '+'} ${number(Math.abs(p.share), 4)} = ${number(p.before, 4)} g/L`,
  'replenish.source.step': (_: object) => 'b/V',
  'replenish.source.kept': (_: object) => '1 − R/V',
  'replenish.source.plateau': (_: object) => 'c_r + b/R, where a roll gives what topping up takes',
  'stop.left': (p: { left: number; published: boolean }) =>
    `${capitalRolls(Math.floor(p.left + 1e-9))} more${p.published ? ', by the count published for this bath' : ', until the indicator begins to turn'}.`,
  'stop.by-acid': (p: { turning: number; purple: number }) =>
    `By its acid it carries ${number(p.turning, 1)} rolls from fresh to the turning of the indicator, ${number(p.purple, 1)} until it is purple.`,
  'stop.acid': (_: object) => 'An acid stop suits.',
  'stop.water': (p: { reasons: readonly (keyof typeof WATER)[] }) =>
    `Plain water is the stop here, moved for half a minute: ${p.reasons.map((one) => WATER[one]).join('; ')}.`,
  'stop.working.acid': (p: { percent: number; molarity: number }) =>
    `${number(p.percent, 3)} % of acid: ${p.molarity.toFixed(4)} mol/L`,
  'stop.working.takes': (p: { part: number; takes: number }, w: Writer) =>
    `At pH 5.2 ${w.percent(p.part)} of it is neutralised: it takes ${p.takes.toFixed(4)} mol`,
  'stop.working.carried': (p: { volume: Millilitres; alkali: number; moles: number }, w: Writer) =>
    `A roll brings ${w.volume(p.volume)} at ${number(p.alkali, 3)} mol/L: ${p.moles.toFixed(5)} mol`,
  'stop.source.acid': (_: object) => 'grams in 100 mL over its molar mass',
  'stop.source.takes': (_: object) => 'pKa of the acid; bromocresol purple turns from 5.2 to 6.8',
  'stop.source.carried': (_: object) => 'assumption until measured',
  'stop.source.stated': (_: object) => 'stated',
} as const

const WATER = {
  'alkaline-fixer': 'acid would upset an alkaline fixer',
  'staining-developer': 'acid would take from the stain',
  'strong-carbonate': 'acid on strong carbonate foams and may blister the film',
} as const

const daysOf = (days: number): string =>
  days < 2 ? `${number(days * 24, 0)} hours` : `${number(Math.floor(days + 1e-9), 0)} days`
