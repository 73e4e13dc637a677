import type { Celsius, Grams, Millilitres } from '../../kernel/index.js'
import type { BathFormula, MixingCaution, Swap, TapMixture, Weighing } from '../../science/index.js'
import type { BenchRole } from '../contamination/order.js'

/** What a product is, as far as its mixing goes. */
export interface MixedProduct {
  readonly name: string
  readonly role: BenchRole
  readonly form: 'liquid' | 'powder'
  readonly formula: BathFormula | null
  readonly hazards: readonly MixHazard[]
  /** Parts A and B; none for one package. */
  readonly packageParts: readonly string[]
  /** Of the first part, each roll; null where its label has none. */
  readonly floor: Millilitres | null
}

export type MixHazard =
  | 'acid'
  | 'caustic'
  | 'strong-acid'
  | 'sensitiser'
  | 'irritant'
  | 'fumes'
  | 'oxidiser'
  | 'poison'
  | 'flammable'

/** A package, or a bottle of stock, that a mix may take from. */
export interface MixSource {
  readonly id: string
  readonly name: string
  readonly unit: 'ml' | 'g'
  readonly held: number
  /** `2027-03-31`; null where none is known. */
  readonly useBy: string | null
  readonly opened: string | null
  /** Which part of a product in parts it is; empty for the only one. */
  readonly part: string
  /** Id in the table of salts, where it is a raw chemical; null for the product itself. */
  readonly salt: string | null
}

export interface MixAsked {
  readonly product: MixedProduct
  readonly volume: Millilitres
  /** 1 + 4 is [1, 4]; null for stock, a powder in packets and a bath by weight. */
  readonly parts: readonly number[] | null
  readonly sources: readonly MixSource[]
  /** The date at the bench. */
  readonly today: string
  /** What the scale tells apart; a tenth of a gram is assumed. */
  readonly scaleStep?: Grams
  /** Rolls that the mix is for, where its concentrate has a floor for each. */
  readonly rolls?: number
  /** Both taps, where the water is to be blended. */
  readonly taps?: { readonly hot: Celsius; readonly cold: Celsius }
}

/** A caution where it counts; its words are in the catalogue. */
export type MixCaution =
  | MixingCaution
  | 'never-with-acid-or-fixer'
  | 'away-from-other-baths'
  | 'irritates'
  | 'poisonous'
  | 'no-flame'

export type WaterKind = 'tap' | 'filtered' | 'distilled'

/** One step of a mixing sheet, in the order of the work. */
export type MixStep =
  | {
      readonly do: 'water'
      readonly amount: Millilitres
      readonly low: Celsius
      readonly high: Celsius
      readonly kind: WaterKind
      readonly cold: boolean
      /** From both taps to the middle of the range; null where no taps were said, or where they do not give it. */
      readonly taps: TapMixture | null
    }
  | {
      readonly do: 'add'
      readonly name: string
      /** Null for a whole packet, whatever it weighs. */
      readonly amount: number | null
      readonly unit: 'ml' | 'g'
      readonly percent: number | null
      readonly swap: Swap | null
      readonly weighing: Weighing | null
      readonly cautions: readonly MixCaution[]
    }
  | { readonly do: 'dissolve' }
  | { readonly do: 'top-up'; readonly to: Millilitres; readonly kind: WaterKind }
  | { readonly do: 'stand'; readonly hours: number; readonly origin: 'practice' }
  | { readonly do: 'label' }

/** What is said before anything is begun. `stops`: it cannot be mixed so. */
export type MixDoubt =
  | {
      readonly of: 'not-enough'
      readonly stops: true
      readonly name: string
      readonly wanted: number
      readonly held: number
      readonly unit: 'ml' | 'g'
    }
  | { readonly of: 'none-on-hand'; readonly stops: true; readonly name: string }
  | { readonly of: 'past-date'; readonly stops: false; readonly name: string; readonly useBy: string }
  | {
      readonly of: 'under-floor'
      readonly stops: false
      readonly rolls: number
      readonly carries: number
      readonly held: Millilitres
      readonly needed: Millilitres
      readonly volumeNeeded: Millilitres
    }
  | { readonly of: 'not-weighable'; readonly stops: true; readonly sentence: string }
  | { readonly of: 'too-little-to-measure'; readonly stops: false; readonly name: string; readonly amount: number }
  | { readonly of: 'tap-water'; readonly stops: false; readonly sentence: string }

/** A mix as it is to be done: what to say first, what it takes, and the numbered steps. */
export interface MixSheet {
  readonly doubts: readonly MixDoubt[]
  readonly takes: readonly { readonly id: string; readonly amount: number }[]
  readonly steps: readonly MixStep[]
}
