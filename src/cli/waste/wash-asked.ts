import {
  all,
  failed,
  ok,
  type Result,
  readDuration,
  readTemperature,
  readVolume,
  type UnitSystem,
} from '../../kernel/index.js'
import type { WashQuestion } from '../../wire/index.js'
import { isJson, jsonIn } from '../asked.js'
import { type FixOptions, fixAsked } from '../baths/fix-asked.js'
import { clearingIn } from '../baths/quantities.js'
import { rowsOf } from '../lists.js'
import { numbersOf } from '../options.js'
import { typed, usage } from '../output.js'

/** How a wash is stated on the command line, and the fixer before it as `fix` takes it. */
export interface WashOptions extends FixOptions {
  readonly fixer?: string
  readonly rollsWashed?: string
  readonly at?: string
  readonly rinse?: 'walls' | 'film-and-walls'
  readonly hardened?: boolean
  readonly washAid?: boolean
  readonly halfLife?: string
}

type Step = WashQuestion['steps'][number]

/** JSON holds the whole question; a list holds steps, and options say the rest. */
export async function washAsked(text: string, options: WashOptions, system: UnitSystem): Promise<Result<WashQuestion>> {
  if (isJson(text)) return jsonIn(text, 'the question', 'wash-question')
  const steps = all(rowsOf(text).rows.map((row) => stepsIn(row, system)))
  if (!steps.ok) return steps
  const numbers = numbersOf(options, ['fixer', 'rollsWashed'])
  if (!numbers.ok) return numbers
  const at = options.at === undefined ? ok(undefined) : typed(readTemperature(options.at, { system, what: '--at' }))
  if (!at.ok) return at
  const halfLife = options.halfLife === undefined ? ok(undefined) : clearingIn(options.halfLife)
  if (!halfLife.ok) return halfLife
  const after = await afterBy(options, system)
  if (!after.ok) return after
  const { fixer, rollsWashed } = numbers.value
  const { rinse, hardened, washAid } = options
  return ok({
    ...UNSAID,
    steps: steps.value.flat(),
    ...(after.value === undefined ? {} : { after: after.value }),
    ...(fixer === undefined ? {} : { fixer_g_per_l: fixer }),
    ...(rollsWashed === undefined ? {} : { rolls: rollsWashed }),
    ...(at.value === undefined ? {} : { temperature_c: at.value }),
    ...(rinse === undefined ? {} : { rinse }),
    ...(hardened === undefined ? {} : { hardened }),
    ...(washAid === undefined ? {} : { wash_aid: washAid }),
    ...(halfLife.value === undefined ? {} : { half_life_s: halfLife.value }),
  })
}

/** What the shape of the question fills in, said here too: reading the shapes takes longer than the answer. */
const UNSAID = {
  fixer_g_per_l: 110,
  rolls: 1,
  temperature_c: 20,
  rinse: 'nothing',
  hardened: false,
  wash_aid: false,
  tests: [],
} as const satisfies Partial<WashQuestion>

/** Undefined where nothing was said of the fixer. */
async function afterBy(options: WashOptions, system: UnitSystem): Promise<Result<WashQuestion['after']>> {
  const { now, volume, film = [] } = options
  if (now === undefined && volume === undefined && film.length === 0) return ok(undefined)
  const { firstBath: _, ...bath } = options
  return fixAsked(null, bath, system)
}

const ROW =
  /^(?:(?<count>\d{1,2})\s*[x×]\s*)?(?<kind>fill|stand|run)\s+(?<volume>\S+)\s+(?<time>\S+)(?:\s+(?<flow>\S+))?$/

/** `7 x fill 300mL 3:00`; `stand` where the water was not moved; `run 300mL 30:00 1L` with its litres a minute. */
function stepsIn(row: string, system: UnitSystem): Result<Step[]> {
  const groups = ROW.exec(row)?.groups
  if (groups === undefined || (groups.kind === 'run') !== (groups.flow !== undefined))
    return failed(
      usage(
        `“${row}” is not a step of a wash. Write “7 x fill 300mL 3:00”, “stand 300mL 5:00” or “run 300mL 30:00 1L”.`,
      ),
    )
  const volume = typed(readVolume(groups.volume as string, { system, what: 'the water' }))
  if (!volume.ok) return volume
  const time = typed(readDuration(groups.time as string, { what: 'its time' }))
  if (!time.ok) return time
  const flow = groups.flow === undefined ? ok(null) : typed(readVolume(groups.flow, { system, what: 'water a minute' }))
  if (!flow.ok) return flow
  const both = { volume_ml: volume.value, time_s: time.value }
  const step: Step =
    flow.value === null
      ? { kind: 'change', ...both, moved: groups.kind === 'fill' }
      : { kind: 'running', ...both, ml_per_min: flow.value }
  return ok(Array.from({ length: Number(groups.count ?? 1) }, () => step))
}
