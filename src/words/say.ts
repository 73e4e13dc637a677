import type { UnitSystem } from '../kernel/index.js'
import type { deskWords } from './catalogue/desk.js'
import { sinkWords } from './catalogue/sink.js'
import { type Writer, writerFor } from './writer.js'

type Catalogue = typeof sinkWords & typeof deskWords
export type Code = keyof Catalogue
export type Params<C extends Code> = Parameters<Catalogue[C]>[0]
type Sentence = (params: never, writer: Writer) => string

const sentences: Record<string, Sentence> = { ...sinkWords }

/**
 * Adds sentences to what can be said. This folder's door adds all there are; only the built pages leave that to
 * whoever needs them, since a phone at the sink loads no words for a desk (see `src/web/vite.config.ts`).
 */
export function learn(words: Readonly<Record<string, Sentence>>): void {
  Object.assign(sentences, words)
}

/**
 * The sentence for a code, in the units given. Every text that a person reads about the work comes from here,
 * so that screen, paper, terminal and voice say the same.
 */
export function say<C extends Code>(code: C, params: Params<C>, units: UnitSystem | Writer): string {
  const writer = typeof units === 'string' ? writerFor(units) : units
  const sentence = sentences[code] as ((params: Params<C>, writer: Writer) => string) | undefined
  if (sentence === undefined) throw new Error(`No sentence was loaded for ${code}.`)
  return sentence(params, writer)
}
