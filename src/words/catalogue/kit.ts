import type { Millilitres } from '../../kernel/index.js'
import type { Writer } from '../writer.js'

type Holds = { format: string; reels: number; covers_ml: number }

const held = ({ format, reels, covers_ml }: Holds, w: Writer): string => {
  const thing = format.includes('x') ? 'sheet' : 'reel'
  return `${reels} ${thing}${reels === 1 ? '' : 's'} of ${format.replace('x', '×')} with ${w.volume(covers_ml as Millilitres)}`
}

/** Tanks, reels and what measures. */
export const kitWords = {
  'kit.lead': (_: object) => 'A plan that names its tank has to fit it, and says which other one would do.',
  'kit.none': (_: object) => 'No tank and no reel is here yet.',
  'kit.none.why': (_: object) =>
    'With what a tank holds and how much covers it, a plan that would leave film dry is refused.',
  'kit.holds': (_: object) => 'A line for each: format, reels (for sheets: sheets), volume. Such as 135, 2, 580 mL',
  'kit.warmth': (_: object) => 'As grams of water. Empty: from its material.',
  'kit.constant': (_: object) => 'Until two thirds of a difference are gone. Empty: guessed.',
  'kit.tank': (p: { holds: readonly Holds[]; moved: 'inversion' | 'rotary'; material: string }, w: Writer) =>
    `${p.material}, ${p.moved === 'rotary' ? 'rolled' : 'turned over'}; ${p.holds.map((one) => held(one, w)).join('; ')}`,
  'kit.reel': (p: { material: string; formats: readonly string[] }) => `${p.material}, for ${p.formats.join(', ')}`,
  'kit.graduate': (p: { holds: number; marks: number }, w: Writer) =>
    `holds ${w.volume(p.holds as Millilitres)}, marked every ${w.volume(p.marks as Millilitres)}`,
  'kit.wet': (_: object) => 'This reel is wet: film sticks to it. Dry it before it is loaded.',
} as const
