import { failed, nameKey, ok, problem, type Result } from '../../kernel/index.js'
import { type Context, type Rooms, shelf } from '../../lab/index.js'
import type { JugView, OnShelf, Posted, Shelf } from '../../wire/index.js'
import { tell } from '../answer.js'
import { jsonAs } from '../asked.js'
import { atBench } from '../data/at-bench.js'
import { type Common, type Output, refuse, unitsOf } from '../output.js'
import { containerLine } from './lines.js'

/** All that stands on the shelf of the bench. */
export const lookAtShelf = (): Promise<Result<Shelf>> =>
  atBench<Shelf>({ path: '/api/shelf', writes: false, here: async (context, rooms) => ok(await shelf(context, rooms)) })

const nameOf = (one: OnShelf | JugView): string => ('statement' in one ? one.statement.name || one.product : one.name)

/** The container of that name or id; of several packages alike the fullest. */
export function containerNamed({ bottles, packages, jugs }: Shelf, name: string): Result<string> {
  const all = [...bottles, ...jugs, ...[...packages].sort((a, b) => b.held - a.held)]
  const found = all.find((one) => one.id === name) ?? all.find((one) => nameKey(nameOf(one)) === nameKey(name))
  return found === undefined ? failed(problem('shelf.no-such-name', { name })) : ok(found.id)
}

/** The ids of what was named, in the order of the names. */
export async function containersNamed(names: readonly string[]): Promise<Result<string[]>> {
  const found = await lookAtShelf()
  if (!found.ok) return found
  const ids: string[] = []
  for (const name of names) {
    const id = containerNamed(found.value, name)
    if (!id.ok) return id
    ids.push(id.value)
  }
  return ok(ids)
}

type Schemas = typeof import('../../wire/index.js')['schemas']
type Wanted = { readonly [K in keyof Schemas]: unknown }

/** Something that is booked: as the interface takes it, and the use case that does it. */
export interface Booking<B, T> {
  readonly path: string
  readonly schema: keyof Wanted
  readonly body: object
  readonly here: (context: Context, rooms: Rooms, body: B) => Promise<Result<T>>
}

/** Books it; what does not fit the shape of the interface is refused before anything is asked. */
export async function booked<B, T>({ path, schema, body, here }: Booking<B, T>): Promise<Result<T>> {
  const { schemas } = await import('../../wire/index.js')
  const parsed = jsonAs(JSON.stringify(body), 'what was typed', schemas[schema] as never) as Result<B>
  if (!parsed.ok) return parsed
  const asked = parsed.value
  return atBench<T>({
    path,
    body: asked as object,
    writes: true,
    here: (context, rooms) => here(context, rooms, asked),
  })
}

/** Prints what an entry did: the containers as they stand after it. */
export function tellPosted(done: Result<Posted>, options: Common, output: Output): number {
  if (!done.ok) return refuse(output, done.problem, options)
  const { containers } = done.value
  return tell(
    { view: done.value, lines: containers.map((one) => containerLine(one, unitsOf(options))), working: () => [] },
    options,
    output,
  )
}
