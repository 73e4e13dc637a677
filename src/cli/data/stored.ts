import type { Celsius } from '../../kernel/index.js'
import { failed, ok, problem, type Result, type UnitSystem } from '../../kernel/index.js'
import { answerView, basisOf, type TimeStatement, timeStatementOf } from '../../lab/index.js'
import { developingTime, type TimeBasis, type TimeQuestion } from '../../science/index.js'
import type { TimeAnswer } from '../../wire/index.js'
import { writerFor } from '../../words/index.js'
import { benchTimes } from './bench-times.js'

interface Named {
  readonly id: string
  readonly statement: TimeStatement
}

/** `Corvane 400 400 ascorbate`: what a stored time is found by. */
const nameOf = ({ statement: { film, exposureIndex, developer } }: Named): string =>
  `${film} ${exposureIndex ?? ''} ${developer}`.replace(/\s+/g, ' ').toLowerCase()

/** The one stored time with this id, or whose film, index and developer hold all the words. */
function pick(times: readonly Named[], name: string): Result<Named> {
  const words = name.toLowerCase().split(/\s+/).filter(Boolean)
  const found = times.filter((time) => time.id === name || words.every((word) => nameOf(time).includes(word)))
  if (found.length === 1) return ok(found[0] as Named)
  if (found.length === 0) return failed(problem('record.not-found', { what: 'developing time', id: name }))
  const choices = found
    .slice(0, 5)
    .map((time) => `“${nameOf(time)}” ${time.id}`)
    .join('; ')
  return failed(
    problem('quantity.ambiguous', {
      question: `“${name}” fits ${found.length} stored times: ${choices}. Say more of it, or give the id.`,
    }),
  )
}

/** The developing time of a stored time, named by its id or by words of its film, index and developer. */
export async function storedAnswer(
  name: string,
  asked: { readonly at: Celsius } & TimeQuestion,
  factors: (ofTime: number | null) => Result<TimeQuestion>,
  units: UnitSystem,
): Promise<Result<{ view: TimeAnswer; basis: TimeBasis }>> {
  const times = await benchTimes()
  if (!times.ok) return times
  const record = pick(
    times.value.map((time) => ({ id: time.id, statement: timeStatementOf(time) })),
    name,
  )
  if (!record.ok) return record
  const basis = basisOf(record.value.statement)
  if (!basis.ok) return basis
  const factored = factors(record.value.statement.exposureIndex)
  if (!factored.ok) return factored
  const answer = developingTime(basis.value, asked.at, { ...asked, ...factored.value })
  if (!answer.ok) return answer
  return ok({
    view: answerView(answer.value, basis.value, record.value.statement.sourceWords, writerFor(units)),
    basis: basis.value,
  })
}
