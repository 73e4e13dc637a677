import type { Millilitres } from '../../../../kernel/index.js'
import { say, type Writer } from '../../../../words/index.js'
import type { OnShelf, ProductRecord } from '../../../shared/api/index.js'
import type { MixLine, MixPlan } from './plan.js'

interface AgainstAsked {
  readonly plan: MixPlan
  readonly product: ProductRecord
  readonly volume: Millilitres
  /** The package of each line, null for none. */
  readonly from: ReadonlyMap<string, OnShelf | null>
  readonly chosen: readonly OnShelf[]
  readonly empty: readonly OnShelf[]
}

/** Everything that stands against a mix, before it is begun; `stops` for what cannot be done at all. */
export function against(asked: AgainstAsked, writer: Writer): { stops: string[]; warns: string[] } {
  const { plan, product, volume, chosen, empty } = asked
  const stops = [...shortOf(asked, writer)]
  const room = chosen.reduce((sum, { statement }) => sum + (statement.kind === 'bottle' ? statement.holds_ml : 0), 0)
  if (empty.length === 0) stops.push(say('mix.warn.no-bottle', {}, writer))
  else if (room < volume) stops.push(say('mix.warn.small', { room, volume }, writer))
  const warns = [
    ...plan.doubts.map((doubt) => say(`formula.doubt.${doubt}`, {}, writer)),
    ...plan.lines.flatMap(({ weighing }) => (weighing !== null && !weighing.ok ? [weighing.problem.sentence] : [])),
    ...plan.lines.flatMap((line) =>
      asked.from.get(line.key)?.left?.state === 'finished' ? [say('mix.warn.past', { name: line.name }, writer)] : [],
    ),
    ...(plan.floor === null ? [] : [say('mix.warn.floor', plan.floor, writer)]),
    ...(product.form === 'powder' && product.formula === null
      ? [say('mix.warn.powder', { name: product.name }, writer)]
      : []),
  ]
  return { stops, warns }
}

function shortOf({ plan, from, volume }: AgainstAsked, writer: Writer): string[] {
  return plan.lines.flatMap((line: MixLine) => {
    const held = from.get(line.key)?.held
    if (held === undefined || held >= line.amount) return []
    const makes = (volume * held) / line.amount
    return [say('mix.warn.short', { name: line.name, needed: line.amount, held, unit: line.unit, makes }, writer)]
  })
}
