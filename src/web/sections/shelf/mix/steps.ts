import { type Celsius, celsius, type Millilitres } from '../../../../kernel/index.js'
import { fromTheTaps } from '../../../../science/index.js'
import { say, type Writer } from '../../../../words/index.js'
import type { OnShelf, ProductRecord } from '../../../shared/api/index.js'
import type { MixLine, MixPlan } from './plan.js'

/** One step of the sheet: what to do, what to take care of, and what its tick says. */
export interface SheetStep {
  readonly key: string
  readonly words: string
  readonly more: readonly string[]
  readonly cautions: readonly string[]
  readonly tick: string
}

interface SheetAsked {
  readonly plan: MixPlan
  readonly product: ProductRecord
  readonly volume: Millilitres
  readonly hot: Celsius | null
  readonly cold: Celsius | null
  readonly bottles: readonly OnShelf[]
}

/** The sheet in its order: water, each addition, topping up, waiting, into the bottles. */
export function stepsOf(asked: SheetAsked, writer: Writer): SheetStep[] {
  const { plan, product, volume, bottles } = asked
  const done = say('mix.tick.done', {}, writer)
  const bare = { more: [], cautions: [], tick: done }
  const powder = product.form === 'powder' || product.formula !== null
  return [
    ...(plan.water === null ? [] : [waterStep(asked, plan.water, writer)]),
    ...plan.lines.map((line) => addStep(line, product, writer)),
    ...(plan.topUpTo === null
      ? []
      : [{ ...bare, key: 'top-up', words: say('mix.step.top-up', { volume: plan.topUpTo }, writer) }]),
    { ...bare, key: 'wait', words: say('mix.step.wait', { role: product.role, powder }, writer) },
    {
      ...bare,
      key: 'bottle',
      words: say('mix.step.bottle', { names: bottles.map(({ statement }) => statement.name) }, writer),
      cautions: product.role === 'cleaner' ? [say('mix.step.bleach', {}, writer)] : [],
    },
  ].filter(({ key }) => key !== 'top-up' || volume > 0)
}

function waterStep(
  { product, hot, cold }: SheetAsked,
  water: NonNullable<MixPlan['water']>,
  writer: Writer,
): SheetStep {
  const wanted = celsius((water.low + water.high) / 2)
  const taps = hot === null || cold === null ? null : fromTheTaps({ volume: water.ml, wanted, hot, cold })
  return {
    key: 'water',
    words: say('mix.step.water', water, writer),
    more: [
      ...(taps === null
        ? []
        : [taps.ok ? say('mix.step.taps', { ...taps.value, at: wanted }, writer) : taps.problem.sentence]),
      ...(product.role === 'developer' ? [say('mix.step.soft', {}, writer)] : []),
    ],
    cautions: [],
    tick: say('mix.tick.done', {}, writer),
  }
}

function addStep(line: MixLine, product: ProductRecord, writer: Writer): SheetStep {
  const { weighing, swap } = line
  const solution =
    weighing?.ok && weighing.value.by === 'solution'
      ? [
          say(
            'formula.solution',
            {
              measured: weighing.value.measured,
              percent: weighing.value.percent,
              grams: weighing.value.stock.grams,
              volume: weighing.value.stock.volume,
              keeps: weighing.value.keeps,
            },
            writer,
          ),
        ]
      : []
  const whole = product.form === 'powder' && product.formula === null
  return {
    key: `add-${line.key}`,
    words: whole
      ? say('mix.step.whole', { name: line.name }, writer)
      : say('mix.step.add', { ...line, called: swap?.wanted ?? null }, writer),
    more: solution,
    cautions: [
      ...line.cautions
        .filter((caution) => caution !== 'dissolve-before-next')
        .map((caution) => say(`formula.caution.${caution}`, {}, writer)),
      // What a label warns of counts where its contents are handled.
      ...(product.formula === null ? product.hazards.map((hazard) => say('product.hazard', { hazard }, writer)) : []),
    ],
    tick: say(line.unit === 'g' ? 'mix.tick.dissolved' : 'mix.tick.done', {}, writer),
  }
}
