import { all, failed, ok, type Result } from '../../kernel/index.js'
import {
  CONTROL_RANGES,
  type ControlLimits,
  type ControlVerdict,
  controlSteps,
  ewmaChart,
  individualsChart,
  judge,
  LIMIT_SETS,
  operatingLevel,
  readControlStrip,
  runRules,
} from '../../science/index.js'
import type { ControlAnswer, ControlQuestion } from '../../wire/index.js'
import { say, type WorkingLine, type Writer } from '../../words/index.js'
import { usage } from '../output.js'

const QUANTITIES = ['base-fog', 'speed-step', 'contrast'] as const
type Quantity = (typeof QUANTITIES)[number]
type Chart = ControlAnswer['charts'][number]
interface Charted {
  readonly chart: Chart
  readonly working: readonly WorkingLine[]
}

/** Charts of every quantity, and one sentence for all: act or wait. */
export function controlView(question: ControlQuestion, writer: Writer): Result<ControlAnswer> {
  const plotted = plottedBy(question)
  if (!plotted.ok) return plotted
  const charts = all(QUANTITIES.map((quantity) => charted(quantity, plotted.value[quantity], question, writer)))
  if (!charts.ok) return charts
  const acting = charts.value.filter(({ chart }) => !WAITING.includes(chart.verdict)).map(({ chart }) => chart.quantity)
  const names = acting.map((quantity) => say(`control.${quantity}`, {}, writer))
  return ok({
    charts: charts.value.map(({ chart }) => chart),
    act: acting.length > 0,
    sentence: acting.length > 0 ? say('control.act', { quantities: names }, writer) : say('control.wait', {}, writer),
    working: charts.value.flatMap(({ working }) => working),
  })
}

const WAITING: readonly Chart['verdict'][] = ['leave-alone', 'watch', 'first-strip-wrong']

/** What is plotted of every strip, in order: as given, or read off its steps, which the first strip chooses. */
function plottedBy({ strips, steps: scheme }: ControlQuestion): Result<Record<Quantity, readonly number[]>> {
  const [first] = strips
  if (scheme === undefined || first?.densities === undefined) {
    if (strips.some(({ speed_step, contrast }) => speed_step === undefined || contrast === undefined))
      return failed(usage('Every strip needs its speed step and contrast, or its densities and `steps` to choose by.'))
    return ok({
      'base-fog': strips.map(({ base_fog }) => base_fog),
      'speed-step': strips.map(({ speed_step }) => speed_step as number),
      contrast: strips.map(({ contrast }) => contrast as number),
    })
  }
  const steps = controlSteps(first.densities, first.base_fog, scheme)
  if (!steps.ok) return steps
  const readings = all(strips.map(({ densities = [], base_fog }) => readControlStrip(densities, base_fog, steps.value)))
  if (!readings.ok) return readings
  return ok({
    'base-fog': readings.value.map(({ baseFog }) => baseFog),
    'speed-step': readings.value.map(({ speedStep }) => speedStep),
    contrast: readings.value.map(({ contrast }) => contrast),
  })
}

function charted(
  quantity: Quantity,
  values: readonly number[],
  question: ControlQuestion,
  writer: Writer,
): Result<Charted> {
  const stated = question.aims[quantity]
  const first = values.slice(0, CONTROL_RANGES.settingUp)
  const aim = stated === undefined ? operatingLevel(first) : ok(stated)
  if (!aim.ok) return aim
  const limits = LIMIT_SETS[question.limits].limits[quantity]
  const verdict = judge(values, aim.value, limits, question.second[quantity])
  if (!verdict.ok) return verdict
  const series = seriesOf(values, aim.value, limits)
  if (!series.ok) return series
  const name = say(`control.${quantity}`, {}, writer)
  const chart: Chart = {
    quantity,
    aim: aim.value,
    limits: { lower: limits.lower, upper: limits.upper, warning: limits.warning },
    deviations: values.map((value) => value - aim.value),
    ...series.value,
    verdict: verdict.value.code,
    sentence: sentenceOf(name, verdict.value, writer),
  }
  const aimSource =
    stated === undefined
      ? say('control.source.mean', { count: first.length }, writer)
      : say('control.source.stated', {}, writer)
  return ok({ chart, working: workingOf(name, chart, limits.mark, aimSource, writer) })
}

/** The statistical charts; one strip alone, or strips that are all alike, have none. */
function seriesOf(
  values: readonly number[],
  aim: number,
  { lower }: ControlLimits,
): Result<Pick<Chart, 'individuals' | 'ewma' | 'rules'>> {
  if (values.length < 2) return ok({ individuals: null, ewma: null, rules: [] })
  const oneSided = lower === null
  const individuals = individualsChart(values, { aim, oneSided })
  if (!individuals.ok) return individuals
  const { deviation } = individuals.value
  // Strips that read all alike have no scatter to judge by.
  if (deviation < 1e-9) return ok({ individuals: null, ewma: null, rules: [] })
  const ewma = ewmaChart(values, { start: aim, deviation, oneSided })
  if (!ewma.ok) return ewma
  const rules = runRules(values, aim, deviation, oneSided)
  if (!rules.ok) return rules
  const { upper, outside } = individuals.value
  return ok({
    individuals: { lower: individuals.value.lower, upper, deviation, outside: [...outside] },
    ewma: {
      averages: [...ewma.value.averages],
      lower: ewma.value.lower,
      upper: ewma.value.upper,
      outside: [...ewma.value.outside],
    },
    rules: rules.value.map((hit) => ({ ...hit })),
  })
}

function sentenceOf(quantity: string, verdict: ControlVerdict, writer: Writer): string {
  switch (verdict.code) {
    case 'leave-alone':
      return say('control.leave-alone', { quantity, ...verdict }, writer)
    case 'watch':
      return say('control.watch', { quantity, ...verdict }, writer)
    case 'trend':
      return say('control.trend', { quantity, ...verdict }, writer)
    case 'second-strip':
      return say('control.second-strip', { quantity, ...verdict }, writer)
    case 'stop':
      return say('control.stop', { quantity, ...verdict }, writer)
    case 'first-strip-wrong':
      return say('control.first-strip-wrong', { quantity, ...verdict }, writer)
  }
}

function workingOf(
  quantity: string,
  { aim, limits, individuals, ewma, rules }: Chart,
  mark: ControlLimits['mark'],
  aimSource: string,
  writer: Writer,
): WorkingLine[] {
  return [
    { line: say('control.work.aim', { quantity, aim }, writer), source: aimSource },
    {
      line: say('control.work.limits', { quantity, ...limits }, writer),
      source: say(`control.source.${mark}`, {}, writer),
    },
    ...(individuals === null
      ? []
      : [
          {
            line: say('control.work.individuals', { quantity, ...individuals }, writer),
            source: say('control.source.individuals', {}, writer),
          },
        ]),
    ...(ewma === null
      ? []
      : [
          {
            line: say('control.work.ewma', { quantity, last: ewma.averages.at(-1) as number, ...ewma }, writer),
            source: say('control.source.ewma', {}, writer),
          },
        ]),
    ...rules.map(({ rule, at }) => ({
      line: say(
        'control.hit',
        { quantity, rule: say(`control.rule.${rule as 'trend'}`, {}, writer), plot: at + 1 },
        writer,
      ),
      source: say('control.source.rules', {}, writer),
    })),
  ]
}
