import { ok } from '../../kernel/index.js'
import { type Bench, getRecipe } from '../../lab/index.js'
import { listPaper } from '../../print/index.js'
import type { Recipe } from '../../score/index.js'
import { say, writeDay } from '../../words/index.js'
import { type Handler, read, type Sent } from '../call.js'

export const recipePaper: Handler<'recipePaper'> = async (call) => {
  const found = await read(call, async (rooms) => {
    const record = await getRecipe(rooms, call.params.id)
    if (!record.ok) return record
    return ok({ ...record.value, bench: (await rooms.house.bench(call.context.bench)) as Bench })
  })
  if (!found.ok) return found
  const { bench, recipe } = found.value
  const now = call.house.clock.now()
  const body = await listPaper({
    recipe: recipe as unknown as Recipe,
    units: bench.units,
    paper: call.query.paper ?? bench.paper,
    today: writeDay(now, bench.zone),
    printedAt: now,
  })
  return ok({ body, fileName: `${say('list.title', recipe, bench.units)}.pdf` } satisfies NonNullable<Sent>)
}
