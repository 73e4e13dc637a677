import { capital, counted } from '../counted.js'

type Treatment =
  | { readonly as: 'normal' }
  | { readonly as: 'index'; readonly index: number }
  | { readonly as: 'contrast'; readonly contrast: number }

type Cut = { readonly format: string; readonly frames: number | null; readonly sheets: number }

/** Frames of a 135 length of which nothing else is said. */
const FULL_LENGTH = 36

/** `4x5` as `4 × 5 in`, `13x18cm` as `13 × 18 cm`; rolls go by their number. */
const sized = (format: string): string => {
  const [, width, height, unit] = format.match(/^(\d+)x(\d+)(cm)?$/) ?? []
  return width === undefined ? format : `${width} × ${height} ${unit ?? 'in'}`
}

/** In a column a count is a figure. */
const figure = (count: number, one: string): string => `${count} ${one}${count === 1 ? '' : 's'}`

/** Words of the slip that stands for film handed over, and of the paired stickers. */
export const rollPaperWords = {
  'slip.title': (p: { person: string }) => `Film handed over: ${p.person}`,
  'slip.of': (p: { person: string }) => `Film of ${p.person}`,
  'slip.count': (p: { count: number }) => capital(`${counted(p.count, 'roll')} counted when handed over.`),
  'slip.taken-in': (_: object) => 'Handed over',
  'slip.due': (_: object) => 'Due',
  'slip.deposit': (_: object) => 'Deposit',
  'slip.loss': (_: object) => 'Agreed on loss',
  'slip.none': (_: object) => 'nothing agreed',
  'slip.column.number': (_: object) => 'Number',
  'slip.column.twin': (_: object) => 'Twin',
  'slip.column.film': (_: object) => 'Film',
  'slip.column.format': (_: object) => 'Format',
  'slip.column.wanted': (_: object) => 'Wanted',
  'slip.cut': ({ format, frames, sheets }: Cut) => {
    if (format === '135') return `135, ${figure(frames ?? FULL_LENGTH, 'frame')}`
    return sheets > 1 ? `${sized(format)}, ${figure(sheets, 'sheet')}` : sized(format)
  },
  'slip.wanted': ({ treatment }: { treatment: Treatment }) => {
    if (treatment.as === 'normal') return 'as usual'
    return treatment.as === 'index' ? `as if it were ${treatment.index}` : `contrast ${treatment.contrast}`
  },
  'slip.link': (_: object) => 'How far it is',
  'slip.link-shows': (p: { until: string }) =>
    `This address says how far each roll is, and nothing else. It works until ${p.until}. Whoever has it can read it; it is withdrawn when you ask.`,
  'slip.code': (_: object) => 'QR code with the private address',
  'slip.sign.person': (_: object) => 'Handed over',
  'slip.sign.bench': (_: object) => 'Taken in',
  'paper.boxes': (_: object) =>
    'Boxes stand for letters that this paper has no type for. The name as it was written is on the screen; write it here by hand where it matters.',
  'sticker.title': (_: object) => 'Paired stickers',
  'sticker.code': (p: { number: string }) => `QR code of roll ${p.number}`,
  'sticker.twin': (p: { twin: number }) => `Twin ${p.twin}`,
  'sticker.on.roll': (_: object) => 'on the roll',
  'sticker.on.cover': (_: object) => 'on its envelope',
} as const
