import { celsius, ok, type Result, writeRatio } from '../../kernel/index.js'
import { type Bench, basisOf, developingTimeOf, type Question, standingTime, type TimeRecord } from '../../lab/index.js'
import { timeCard } from '../../print/index.js'
import type { DevelopingTime, TimeBasis } from '../../science/index.js'
import { writeDay } from '../../words/index.js'
import { type Handler, read, type Sent } from '../call.js'
import { questionOf } from './question.js'

interface Found {
  readonly record: TimeRecord
  readonly basis: TimeBasis
  readonly asked: DevelopingTime | null
  readonly bench: Bench
}

/** The time card of a film as PDF; with a temperature in the query it leads with that answer. */
export const card: Handler<'timeCard'> = async (call) => {
  const { at_c, paper, ...rest } = call.query
  const question = at_c === undefined ? null : questionOf(rest, celsius(at_c))
  const found = await read(call, (rooms) => findForCard(rooms, call.params.id, call.context.bench, question))
  if (!found.ok) return found
  const { record, basis, asked, bench } = found.value
  const now = call.house.clock.now()
  const body = await timeCard({
    film: record.film,
    exposureIndex: record.exposureIndex,
    developer: record.developer,
    dilution: record.dilutionParts === null ? null : writeRatio({ parts: record.dilutionParts }),
    agitation: record.agitation,
    basis,
    asked,
    units: bench.units,
    paper: paper ?? bench.paper,
    sourceWords: record.sourceWords,
    savedAt: writeDay(record.savedAt, bench.zone),
    today: writeDay(now, bench.zone),
    printedAt: now,
  })
  return ok({ body, fileName: `${record.film} in ${record.developer}.pdf` } satisfies NonNullable<Sent>)
}

type Rooms = Parameters<typeof standingTime>[0]

async function findForCard(
  rooms: Rooms,
  id: string,
  benchId: string,
  question: Question | null,
): Promise<Result<Found>> {
  const record = await standingTime(rooms, id)
  if (!record.ok) return record
  const basis = basisOf(record.value)
  if (!basis.ok) return basis
  const asked = question === null ? ok(null) : await developingTimeOf(rooms, basis.value, question)
  if (!asked.ok) return asked
  const bench = (await rooms.house.bench(benchId)) as Bench
  return ok({ record: record.value, basis: basis.value, asked: asked.value, bench })
}
