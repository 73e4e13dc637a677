import {
  type Celsius,
  type Grams,
  grams,
  type Millilitres,
  type Ratio,
  type Reading,
  readMass,
  readNumber,
  readRatio,
  readTemperature,
  readVolume,
  type UnitSystem,
} from '../../../../kernel/index.js'
import type { ProductRecord } from '../../../shared/api/index.js'

/** A mix as it is typed and ticked: kept for the tab, so that a reload in mid-mix loses nothing. */
export interface MixDraft {
  readonly product: string
  readonly ratio: string
  readonly volume: string
  readonly rolls: string
  readonly hot: string
  readonly cold: string
  readonly scale: string
  /** Chosen package by line; `none` for none. */
  readonly from: Readonly<Record<string, string>>
  readonly instead: Readonly<Record<string, string>>
  /** Bottles it goes into; null while none was chosen, which is the first empty one. */
  readonly into: readonly string[] | null
  readonly started: boolean
  /** Steps that are ticked, from the first. */
  readonly done: number
  readonly note: string
}

export const EMPTY_MIX: MixDraft = {
  product: '',
  ratio: '',
  volume: '1 L',
  rolls: '',
  hot: '',
  cold: '',
  scale: '0.1 g',
  from: {},
  instead: {},
  into: null,
  started: false,
  done: 0,
  note: '',
}

/** How it is read; null for what is not typed. */
export interface MixReading {
  readonly ratio: Reading<Ratio> | null
  readonly volume: Reading<Millilitres> | null
  readonly hot: Reading<Celsius> | null
  readonly cold: Reading<Celsius> | null
  readonly scale: Reading<Grams> | null
  readonly scaleStep: Grams
  readonly rolls: number | null
  /** Parts of a ratio; null for what has none. Undefined while it is not decided. */
  readonly parts: readonly number[] | null | undefined
}

const USUAL_STEP = grams(0.1)

export function readMix(draft: MixDraft, product: ProductRecord | undefined, units: UnitSystem): MixReading {
  const typed = <T>(text: string, read: (text: string) => Reading<T>) => (text.trim() === '' ? null : read(text))
  const byRatio = product !== undefined && product.formula === null && product.form === 'liquid'
  const ratio = byRatio ? typed(draft.ratio, (text) => readRatio(text)) : null
  const scale = typed(draft.scale, (text) => readMass(text, { system: units }))
  const parts = ratio?.kind === 'read' ? ratio.value.parts : byRatio && draft.ratio.trim() !== '' ? undefined : null
  return {
    ratio,
    volume: typed(draft.volume, (text) => readVolume(text, { system: units })),
    hot: typed(draft.hot, (text) => readTemperature(text, { system: units })),
    cold: typed(draft.cold, (text) => readTemperature(text, { system: units })),
    scale,
    scaleStep: scale?.kind === 'read' ? scale.value : USUAL_STEP,
    rolls: readNumber(draft.rolls.trim()) ?? null,
    parts: parts === null || parts === undefined || parts.length > 1 ? parts : null,
  }
}
