import { dayAt, ok, problem, type Result } from '../../kernel/index.js'
import { listFilms, takeInRolls } from '../../lab/index.js'
import { knownOf, type ReadLine, readRollList, type TakenRoll } from '../../planning/index.js'
import type { FilmRecord, RollRecord, TakeInRolls } from '../../wire/index.js'
import { say } from '../../words/index.js'
import { isJson, jsonIn } from '../asked.js'
import { atBench } from '../data/at-bench.js'
import { clock, zoneHere } from '../data/open.js'
import { listText } from '../lists.js'
import { type Common, type Output, refuse, unitsOf, usage } from '../output.js'

export interface TakeInOptions extends Common {
  readonly film?: string
  readonly process?: string
  readonly format?: string
  readonly whose?: string
  readonly index?: string
  readonly wanted?: string
  readonly due?: string
  readonly note?: string
  readonly order?: string
  readonly dryRun?: boolean
}

/** Takes rolls in: one from options, or as many as a file or standard input lists. */
export async function takeIn(file: string | undefined, options: TakeInOptions, output: Output): Promise<number> {
  const asked = await question(file, options)
  if (!asked.ok) return refuse(output, asked.problem, options)
  const { lines, request } = asked.value
  if (lines.some(({ troubles }) => troubles.length > 0)) return refuseLines(lines, options, output)
  if (request.rolls.length === 0) return refuse(output, usage('No roll is named. Give --film, or a list.'), options)
  if (options.dryRun) return dryRun(lines, request, options, output)
  const taken = await atBench<{ rolls: RollRecord[] }>({
    path: '/api/rolls',
    body: request,
    writes: true,
    here: (context, rooms) => takeInRolls(context, rooms, request),
  })
  if (!taken.ok) return refuse(output, taken.problem, options)
  if (options.json) output.out(JSON.stringify(taken.value, null, 2))
  else for (const roll of taken.value.rolls) output.out(say('roll.line', roll, unitsOf(options)))
  return 0
}

interface Asked {
  readonly lines: readonly ReadLine[]
  readonly request: TakeInRolls
}

async function question(file: string | undefined, options: TakeInOptions): Promise<Result<Asked>> {
  const list = options.film === undefined ? await listText(file) : ok(oneLine(options))
  if (!list.ok) return list
  if (isJson(list.value)) {
    const request = await jsonIn(list.value, 'the question', 'take-in-question')
    return request.ok ? ok({ lines: [], request: request.value }) : request
  }
  const films = await atBench<{ films: FilmRecord[] }>({
    path: '/api/films',
    writes: false,
    here: async (_, rooms) => ok(await listFilms(rooms)),
  })
  if (!films.ok) return films
  const kept = films.value.films.filter(({ removed }) => !removed)
  const lines = readRollList(list.value, knownOf(dayAt(clock.now(), zoneHere()), kept))
  return ok({
    lines,
    request: requestOf(
      lines.flatMap(({ rolls }) => rolls),
      options,
    ),
  })
}

const requestOf = (statements: readonly TakenRoll[], { order }: TakeInOptions): TakeInRolls => ({
  order_id: order ?? null,
  rolls: statements.map((statement) => ({ statement, number: null })),
})

/** The options as a list of one, so that both are read alike. */
function oneLine({ film, process, format = '135', whose, index, wanted, due, note }: TakeInOptions): string {
  const cells = { film, process, format, whose, index, wanted, due, note }
  const said = Object.entries(cells).flatMap(([name, text]) => (text === undefined ? [] : [[name, text] as const]))
  return [said.map(([name]) => name), said.map(([, text]) => quoted(text))].map((cells) => cells.join(',')).join('\n')
}

const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`

/** What would be taken in; nothing is kept. */
function dryRun(lines: readonly ReadLine[], request: TakeInRolls, options: TakeInOptions, output: Output): number {
  if (options.json) output.out(JSON.stringify(request, null, 2))
  else {
    for (const { line, rolls } of lines) {
      const [roll] = rolls
      if (roll) output.out(say('roll.line-read', { line, count: rolls.length, ...roll }, unitsOf(options)))
    }
    output.out(say('roll.dry-run', { count: request.rolls.length }, unitsOf(options)))
  }
  return 0
}

/** Every line that cannot be right, and then that nothing was taken in. */
function refuseLines(lines: readonly ReadLine[], options: TakeInOptions, output: Output): number {
  const wrong = lines.filter(({ troubles }) => troubles.length > 0)
  const said = wrong.map(({ line, troubles }) => `${line}: ${troubles.map(({ sentence }) => sentence).join(' ')}`)
  if (!options.json) for (const sentence of said) output.err(sentence)
  return refuse(output, problem('roll.lines-wrong', { count: wrong.length, first: said[0] ?? '' }), options)
}
