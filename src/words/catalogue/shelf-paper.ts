const HAZARD = {
  acid: 'acid',
  caustic: 'caustic',
  'strong-acid': 'strong acid',
  sensitiser: 'can make skin allergic',
  irritant: 'irritates',
  fumes: 'gives off fumes',
  oxidiser: 'oxidising',
  poison: 'poison',
  flammable: 'flammable',
} as const
const grams = (value: number): string => String(Number(value.toPrecision(2)))
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/** Labels of bottles and the record of a hand-over, on paper. */
export const shelfPaperWords = {
  'label.title': (_: object) => 'Labels of bottles',
  'label.lot': (p: { code: string; parts: string | null }) => `Lot ${p.code}${p.parts === null ? '' : `, ${p.parts}`}`,
  'label.mixed': (p: { day: string }) => `Mixed ${p.day}`,
  'label.by': (p: { by: string }) => `by ${p.by}`,
  'label.use-by': (p: { day: string }) => `Use by ${p.day}`,
  'label.hazards': (p: { hazards: readonly (keyof typeof HAZARD)[] }) =>
    `${capital(p.hazards.map((hazard) => HAZARD[hazard]).join(', '))}.`,
  'label.code': (p: { code: string }) => `Code of lot ${p.code}`,
  'hand-over.title': (_: object) => 'Waste handed over',
  'hand-over.when': (_: object) => 'Day',
  'hand-over.to': (_: object) => 'Taken by',
  'hand-over.from': (_: object) => 'Out of',
  'hand-over.amount': (_: object) => 'Volume',
  'hand-over.rolls': (_: object) => 'Film fixed in it',
  'hand-over.count': (p: { rolls: number }) => `${Number(p.rolls.toFixed(1))} rolls`,
  'hand-over.silver': (_: object) => 'Silver, estimated',
  'hand-over.band': (p: { low: number; usual: number; high: number }) =>
    `about ${grams(p.usual)} g, between ${grams(p.low)} and ${grams(p.high)} g`,
  'hand-over.note': (_: object) => 'Note',
  'hand-over.limit': (p: { limit: number }) =>
    `For comparison: the United States call waste with ${p.limit.toFixed(1)} mg/L of silver and more hazardous (40 CFR 261.24).`,
  'hand-over.day': (_: object) => 'Day',
  'hand-over.signed': (_: object) => 'Signed by whoever took it',
} as const
