import type { Celsius, Seconds, UnitSystem } from '../kernel/index.js'
import { say } from './say.js'
import { type Writer, writerFor } from './writer.js'

interface At {
  readonly temperature: Celsius
  readonly time: Seconds
}

/** What a graph of times shows; the science's basis and answer fit by shape. */
export interface Graphed {
  readonly film: string
  readonly basis: {
    readonly kind: 'ordinary' | 'single-bath' | 'fixed'
    readonly points: readonly At[]
    readonly window: { readonly from: Celsius; readonly to: Celsius } | null
    readonly reference: At
  }
  readonly asked: At | null
}

/** Every word on the graph of times, and the sentences for those who do not see it. */
export function graphLabels({ film, basis, asked }: Graphed, units: UnitSystem) {
  const writer = writerFor(units)
  return {
    title: say('graph.title', { film }, writer),
    description: description(basis, asked, writer),
    sheet: coveredRange(basis, writer),
    beyond: say('graph.beyond', {}, writer),
    doubt: say('graph.doubt', {}, writer),
    reference: say('graph.reference', basis.reference, writer),
    caption: say(basis.kind === 'fixed' ? 'graph.caption-fixed' : 'graph.caption', {}, writer),
  }
}

/** The coldest and the warmest point; points are sorted by temperature. */
function ends({ points, reference }: Graphed['basis']): { cold: At; warm: At } {
  return { cold: points[0] ?? reference, warm: points.at(-1) ?? reference }
}

function description(basis: Graphed['basis'], asked: At | null, writer: Writer): string {
  const { cold, warm } = ends(basis)
  const count = basis.points.length
  const range = { from: cold.temperature, to: warm.temperature }
  return [
    say('graph.points', { count, ...range }, writer),
    ...(count > 1 ? [say('graph.runs', { cold, warm }, writer)] : []),
    ...(asked === null ? [] : [say('graph.asked', asked, writer)]),
  ].join(' ')
}

function coveredRange(basis: Graphed['basis'], writer: Writer): string {
  if (basis.window !== null) return say('graph.window', basis.window, writer)
  const { cold, warm } = ends(basis)
  return cold.temperature === warm.temperature
    ? say('graph.sheet-one', { at: cold.temperature }, writer)
    : say('graph.sheet', { from: cold.temperature, to: warm.temperature }, writer)
}
