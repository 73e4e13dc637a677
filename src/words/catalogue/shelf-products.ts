import { writeRatio } from '../../kernel/index.js'
import { counted } from '../counted.js'

type Use = 'single-use' | 'reusable' | 'replenished'
type Hazard = keyof typeof HAZARDS

const USES: Readonly<Record<Use, string>> = {
  'single-use': 'used once',
  reusable: 'poured back and used again',
  replenished: 'replenished',
}

const HAZARDS = {
  acid: 'Acid: gloves and eye protection; it goes into the water, never water into it.',
  caustic: 'Caustic: goggles and gloves; a little at a time into cold water, never water onto it.',
  'strong-acid': 'Strong acid: goggles and gloves; the acid goes into the water, never water into the acid.',
  sensitiser: 'Skin can become allergic to it: gloves, and raise no dust.',
  irritant: 'Irritates skin and eyes: gloves.',
  fumes: 'Gives off fumes: fresh air in the room, and no face over it.',
  oxidiser: 'Oxidises: keep it from acids and from anything that burns.',
  poison: 'Poison: locked away from children and pets.',
  flammable: 'Burns: no flame near it.',
} as const

/** Sentences of products: what a label says of a concentrate, a powder or a bath. */
export const shelfProductsWords = {
  'product.lead': (p: { count: number }) =>
    p.count === 0
      ? 'No product is kept yet. Keep what you have from its label, or begin with one by composition.'
      : `${counted(p.count, 'product')} kept.`.replace(/^./, (one) => one.toUpperCase()),
  'product.row': (p: { role: string; use: Use; dilutions: readonly (readonly number[])[] }) =>
    [
      p.role,
      USES[p.use],
      ...(p.dilutions.length === 0 ? [] : [p.dilutions.map((parts) => writeRatio({ parts })).join(' or ')]),
    ].join('; '),
  'product.packages': (p: { count: number }) => (p.count === 0 ? 'no package' : counted(p.count, 'package')),
  'product.starting': (_: object) =>
    'Generic baths by composition, to start from. They carry no figure that only a label can give: put yours in.',
  'product.starting-from': (p: { origin: string }) =>
    p.origin === 'memory' ? 'from memory' : p.origin === 'practice' ? 'by common practice' : p.origin,
  'product.new': (_: object) => 'Only a name and its role have to be known. What its label does not say, leave empty.',
  'product.not-here': (_: object) => 'It may have been removed, or the link is an old one.',
  'product.kept': (p: { name: string }) => `${p.name} is kept. Add its package, or mix it.`,
  'product.corrected': (p: { name: string }) => `${p.name} is corrected; the old words stay on record.`,
  'product.figures': (_: object) =>
    'What its label or sheet says. Empty is unknown, and then nothing is made up for it.',
  'product.dilution-unread': (p: { text: string }) => `“${p.text}” is no ratio. Write them like 1 + 4, 1 + 9.`,
  'product.number-unread': (p: { text: string }) => `“${p.text}” is no number. Write one like 20 or 0.6.`,
  'product.hazard': (p: { hazard: Hazard }) => HAZARDS[p.hazard],
  'product.care': (_: object) =>
    'This is no safety data sheet. Read the one of your product, and keep to local codes; children and pets stay out.',
  'product.formula': (p: { from: string }) =>
    p.from === 'memory'
      ? 'These figures are from memory. Hold them against a page before you trust them.'
      : 'Grams and millilitres a litre, in the order of mixing.',
  'product.no-packages': (_: object) => 'No package of it is on the shelf. Add one, and a mix takes from it.',
} as const
