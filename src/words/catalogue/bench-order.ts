const DO = {
  'goes-on': 'Shake it out and go on.',
  rinse: 'Rinse it once with water.',
  'rinse-well': 'Rinse it three times, inside and outside.',
  'own-vessel': 'Take another one: this pair never shares a vessel.',
} as const

const BECAUSE = {
  'same-bath': 'It is the same bath.',
  'as-the-film-goes': 'The film goes this way too, and carries more along.',
  'another-of-its-kind': 'It is another bath of its kind, and a remainder changes its strength.',
  'fixer-in-developer': 'Traces of fixer in a developer fog and stain film.',
  'fixer-in-stop': 'Acid throws sulfur out of fixer, and the silver in it spreads.',
  'fixer-after-washing': 'It would put fixer back on film that is washed.',
  'acid-in-developer': 'Acid takes the alkali that a developer works by.',
  'developer-in-fixer': 'Developer makes fixer weaker, and the pair stains film.',
  backwards: 'Against the way of the film a remainder weakens the bath before.',
  foam: 'Its foam clings, and bells of air leave round spots.',
  'dries-on-film': 'Whatever is in the last bath dries on the film.',
  'poison-gas': 'Remainders of these make poisonous gas together.',
  oxidiser: 'A trace of bleach destroys other baths, and a good deal of it makes gas and heat.',
  'not-known': 'Nothing is known of one of them.',
} as const

/** What comes between two baths in one graduate, and why. */
export const benchOrderWords = {
  'order.do': (p: { do: keyof typeof DO }) => DO[p.do],
  'order.because': (p: { because: keyof typeof BECAUSE }) => BECAUSE[p.because],
} as const
