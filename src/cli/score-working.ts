import type { Seconds } from '../kernel/index.js'
import type { Bath, Step, TankConditions, TankPlan } from '../score/index.js'
import { say, type WorkingLine, type Writer } from '../words/index.js'

/** What the lengths of a score rest on: each bath and act, then the parts of a bath change, like ones once. */
export function scoreWorking(
  plan: TankPlan,
  development: TankConditions['development'],
  writer: Writer,
): WorkingLine[] {
  const { steps } = plan.tank.recipe
  const baths = steps.filter((step) => step.step === 'bath')
  const parts = baths.flatMap((bath) => handlingOf(bath, writer))
  const once = parts.filter(({ line, source }, i) => {
    const first = parts.findIndex((other) => other.line === line && other.source === source)
    return first === i
  })
  return [...steps.map((step) => stepOf(step, plan, development, writer)), ...once]
}

function stepOf(step: Step, plan: TankPlan, development: TankConditions['development'], writer: Writer): WorkingLine {
  const { name } = step
  if (step.step === 'act')
    return {
      line: say('score.working.act', { name, time: step.length.seconds }, writer),
      source: say(`list.origin.${step.length.origin}`, {}, writer),
    }
  const span = plan.baths.find(({ id }) => id === step.id)
  const time = (span === undefined ? 0 : span.clockEnd - span.clockStart) as Seconds
  const law = step.time
  if (law.law === 'by-developing-time')
    return {
      line: say('score.working.bath', { name, time }, writer),
      source: say(`score.source.${development?.from ?? 'none'}`, {}, writer),
    }
  const said = { name, time }
  return {
    line:
      law.law === 'fixed'
        ? say('score.working.bath', said, writer)
        : say('score.working.clearing', { ...said, multiple: law.multiple, clearing: law.assumed }, writer),
    source: say(`list.origin.${law.origin}`, {}, writer),
  }
}

const handlingOf = ({ handling }: Bath, writer: Writer): WorkingLine[] =>
  (['pour', 'drain', 'cap', 'tap'] as const).flatMap((part) => {
    const length = handling[part]
    return length === null
      ? []
      : [
          {
            line: say(`score.working.${part}`, { time: length.seconds }, writer),
            source: say(`list.origin.${length.origin}`, {}, writer),
          },
        ]
  })
