import { failed, ok, problem, type Result } from '../../kernel/index.js'
import { type Bench, type Rooms, runFollowed } from '../../lab/index.js'
import { benchSheet, runRecord } from '../../print/index.js'
import { type Code, say, writeDay } from '../../words/index.js'
import { type Caller, type Handler, read, type Sent } from '../call.js'

type Found = Extract<Awaited<ReturnType<typeof runFollowed>>, { ok: true }>['value'] & { readonly bench: Bench }
type Paper = 'A4' | 'Letter'

async function findRun(caller: Caller, id: string): Promise<Result<Found>> {
  return read(caller, async (rooms: Rooms) => {
    const found = await runFollowed(rooms, id, caller.house.clock.now())
    if (!found.ok) return found
    const bench = (await rooms.house.bench(caller.context.bench)) as Bench
    return ok({ ...found.value, bench })
  })
}

/** What is on the reels, and what each film of a mixed tank gets against what it wants. */
function onReels({ on_reels }: Found['run']['plan']['tanks'][number], { units }: Bench): string {
  const films = say('run.on-reels', { films: on_reels }, units)
  const departing = on_reels.flatMap(({ film, roll, wants_s, departs }) =>
    wants_s === undefined || departs === undefined
      ? []
      : [say('run.departs', { film: roll?.number ?? film, wants: wants_s, departs }, units)],
  )
  return departing.length === 0 ? films : [`${films}.`, ...departing].join(' ')
}

/** What both papers have in common. */
function paperOf({ run, score, bench }: Found, paper: Paper | undefined, now: number) {
  const { tanks } = run.plan
  const films = [...new Set(tanks.flatMap(({ on_reels }) => on_reels.map(({ film }) => film)))].join(', ')
  const recipe = [...new Set(tanks.map((tank) => tank.recipe.name))].join(', ')
  return {
    title: say('run.title', { films, recipe }, bench.units),
    score,
    loads: Object.fromEntries(tanks.map((tank) => [tank.conditions.tank, onReels(tank, bench)])),
    units: bench.units,
    paper: paper ?? bench.paper,
    today: writeDay(now, bench.zone),
    printedAt: now,
  }
}

/** The verdicts that stand, in words; null while nothing was said. */
function verdictOf({ run, verdicts, bench }: Found): string | null {
  const said = run.plan.tanks.flatMap(({ conditions: { tank } }) => {
    const newest = verdicts.findLast((verdict) => verdict.tank === tank)
    if (newest === undefined) return []
    const words = [
      ...(newest.density === null ? [] : [say(`run.verdict.${newest.density}` as Code, {} as never, bench.units)]),
      ...newest.marks.map((mark) => say(`run.mark.${mark}` as Code, {} as never, bench.units)),
    ]
    return [say('run.verdict', { tank, said: words.join(', '), note: newest.note }, bench.units)]
  })
  return said.length === 0 ? null : said.join('\n')
}

export const runSheet: Handler<'runSheet'> = async (call) => {
  const found = await findRun(call, call.params.id)
  if (!found.ok) return found
  const common = paperOf(found.value, call.query.paper, call.house.clock.now())
  const body = await benchSheet({ ...common, note: found.value.run.plan.note })
  return ok({ body, fileName: `${common.title}, bench sheet.pdf` } satisfies NonNullable<Sent>)
}

/** The record says when things were done, so it waits until the time of every device is settled. */
export const runRecordPaper: Handler<'runRecord'> = async (call) => {
  const found = await findRun(call, call.params.id)
  if (!found.ok) return found
  const { state, following, bench, run } = found.value
  if (following.doubts.length > 0) return failed(problem('run.clock-in-doubt'))
  const common = paperOf(found.value, call.query.paper, call.house.clock.now())
  const verdict = verdictOf(found.value)
  const body = await runRecord({ ...common, state, following, zone: bench.zone, verdict, note: run.plan.note })
  return ok({ body, fileName: `${common.title}, record.pdf` } satisfies NonNullable<Sent>)
}
