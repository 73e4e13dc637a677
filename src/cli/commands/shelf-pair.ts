import { pairOfBaths, rotateBaths } from '../../lab/index.js'
import type { PairView, Rotated } from '../../wire/index.js'
import { say } from '../../words/index.js'
import { tell } from '../answer.js'
import { atBench } from '../data/at-bench.js'
import { type Common, type Output, refuse, unitsOf, usage } from '../output.js'
import { booked, containersNamed } from '../shelf/at.js'
import { containerLine } from '../shelf/lines.js'
import { type BookOptions, said } from '../shelf/options.js'

export interface PairOptions extends BookOptions {
  readonly rotate?: boolean
  readonly jug?: string
  readonly fresh?: string
}

/** Says whether two fixing baths rotate, or rotates them. */
export async function twoBaths(first: string, second: string, options: PairOptions, output: Output): Promise<number> {
  if (options.rotate && options.jug === undefined)
    return refuse(output, usage('Say which jug the first bath goes to, like --jug "Silver waste".'), options)
  const { jug, fresh } = options
  const ids = await containersNamed([
    first,
    second,
    ...(jug === undefined ? [] : [jug]),
    ...(fresh === undefined ? [] : [fresh]),
  ])
  if (!ids.ok) return refuse(output, ids.problem, options)
  const [first_id, second_id, jug_id, fresh_id = null] = ids.value as [string, string, string, string?]
  return options.rotate
    ? rotated({ first_id, second_id, jug_id, fresh_id, ...said(options) }, options, output)
    : judged({ first_id, second_id }, options, output)
}

async function rotated(body: object, options: Common, output: Output): Promise<number> {
  const done = await booked<never, Rotated>({
    ...{ path: '/api/shelf/rotate', schema: 'RotateBaths', body },
    here: (context, rooms, asked) => rotateBaths(context, rooms, asked),
  })
  if (!done.ok) return refuse(output, done.problem, options)
  const lines = done.value.containers.map((one) => containerLine(one, unitsOf(options)))
  return tell({ view: done.value, lines, working: () => [] }, options, output)
}

async function judged(
  body: { readonly first_id: string; readonly second_id: string },
  options: Common,
  output: Output,
): Promise<number> {
  const found = await atBench<PairView>({
    path: '/api/shelf/two-baths',
    body,
    writes: false,
    here: (context, rooms) => pairOfBaths(context, rooms, body),
  })
  if (!found.ok) return refuse(output, found.problem, options)
  const { used, verdict, left_rolls: left } = found.value
  const lines = [say('shelf.line.pair', { used, verdict, left }, unitsOf(options))]
  return tell({ view: found.value, lines, working: () => [] }, options, output)
}
