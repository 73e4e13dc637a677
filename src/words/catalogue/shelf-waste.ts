import type { Millilitres } from '../../kernel/index.js'
import type { Writer } from '../writer.js'

/** Sentences of the page of waste: jugs, hand-overs, and limits as a reference. */
export const shelfWasteWords = {
  'jugs.none': (_: object) => 'No jug for waste stands here yet.',
  'jugs.none.how': (_: object) =>
    'Spent fixer holds silver, so it is collected and handed over. Add a jug, and get rid of a bath on the page of its lot: the jug counts volume and silver.',
  'jugs.lead': (p: { held: number; low: number; high: number }, w: Writer) =>
    p.held === 0
      ? 'The jugs are empty.'
      : `${w.volume(p.held as Millilitres)} wait to be handed over, with ${Number(p.low.toFixed(1))} to ${Number(p.high.toFixed(1))}\u202fg of silver in them by estimate.`,
  'jugs.room': (p: { room: number; holds: number }, w: Writer) =>
    `room for ${w.volume(p.room as Millilitres)} of ${w.volume(p.holds as Millilitres)}`,
  'jugs.rich': (p: { ml: number; rolls: number }, w: Writer) =>
    `${w.volume(p.ml as Millilitres)} of it held silver, from ${Number(p.rolls.toFixed(1))} rolls`,
  'jugs.hand-over.to': (_: object) => 'Who took it, such as the receiving station or a silver recoverer.',
  'jugs.handed-over': (p: { name: string; to: string }) => `What was in ${p.name} is handed over to ${p.to}.`,
  'jugs.codes': (_: object) =>
    'Local codes and whoever receives the waste decide what may go where. What stands below is for reference and no advice. Septic tank and garden: never.',
  'jugs.no-spoon': (_: object) =>
    'Do not neutralise baths by the spoon: acid on sulfite gives off sulfur dioxide, and a litmus strip says nothing of silver.',
  'jugs.rule.silver': (p: { limit: number }) =>
    `From ${p.limit.toFixed(1)}\u202fmg/L of silver on, the United States call waste hazardous.`,
  'jugs.source': (p: { source: string; year: number }) => `${p.source}, as of ${p.year}`,
} as const
