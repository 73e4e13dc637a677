import { all, failed, ok, type Result, type UnitSystem } from '../../kernel/index.js'
import { CARRIED_OUT, type FixerKind, type FixingFamily, UNKNOWN_CAPACITY } from '../../science/index.js'
import type { FixQuestion } from '../../wire/index.js'
import { isJson, jsonIn } from '../asked.js'
import { cellsOf, rowsOf } from '../lists.js'
import { numbersOf, pairOf } from '../options.js'
import { numberOf, usage } from '../output.js'
import { fixedFilmIn } from './film.js'
import { clearingIn, partIn, volumesOf } from './quantities.js'

/** How a fixer is stated on the command line. */
export interface FixOptions {
  readonly fresh?: string
  readonly now?: string
  readonly family?: FixingFamily
  readonly volume?: string
  readonly rollsPerLitre?: string
  readonly kind?: 'sodium' | 'ammonium'
  readonly film?: readonly string[]
  readonly silverLimit?: string
  readonly silver?: string
  readonly bottle?: string
  readonly fill?: string
  readonly carried?: string
  readonly rollsPerFill?: string
  readonly firstBath?: readonly string[]
}

type Bath = NonNullable<FixQuestion['bath']>
type Test = NonNullable<Bath['tests']>['made'][number]

/** JSON holds the whole question; a list holds clearing tests, and options say the rest. */
export async function fixAsked(
  text: string | null,
  options: FixOptions,
  system: UnitSystem,
): Promise<Result<FixQuestion>> {
  if (text !== null && isJson(text)) return jsonIn(text, 'the question', 'fix-question')
  const made = text === null ? ok(null) : all(rowsOf(text).rows.map(testIn))
  if (!made.ok) return made
  const clearing = clearingBy(options)
  if (!clearing.ok) return clearing
  const bath = bathBy(options, made.value, system)
  if (!bath.ok) return bath
  const first = all((options.firstBath ?? []).map((one) => partIn('first-bath', one)))
  if (!first.ok) return first
  if (clearing.value === null && bath.value === null && first.value.length === 0) return failed(usage(NOTHING_ASKED))
  return ok({
    ...(clearing.value === null ? {} : { clearing: clearing.value }),
    ...(bath.value === null ? {} : { bath: bath.value }),
    ...(first.value.length === 0 ? {} : { first_bath: first.value.map(([done, capacity]) => ({ done, capacity })) }),
  })
}

const NOTHING_ASKED =
  'Say a clearing test (--fresh 0:35 --now 0:55), a bath (--volume 1L --film 120=3), or two baths (--first-bath 12/25).'

/** `8, 0:42`, with or without a date before it: rolls fixed by then, and what a clip took to clear. */
function testIn(row: string): Result<Test> {
  const cells = cellsOf(row)
  const [rolls, clearing, ...rest] = /^\d{4}-\d{2}-\d{2}$/.test(cells[0] ?? '') ? cells.slice(1) : cells
  if (rolls === undefined || clearing === undefined || rest.length > 0)
    return failed(usage(`“${row}” is not a clearing test. Write the rolls fixed by then and the time, like “8, 0:42”.`))
  const count = numberOf('tests', rolls)
  if (!count.ok) return count
  const time = clearingIn(clearing)
  return time.ok ? ok({ rolls: count.value, clearing_s: time.value }) : time
}

function clearingBy({ fresh, now, family = 'ordinary' }: FixOptions): Result<FixQuestion['clearing'] | null> {
  if (now === undefined) return ok(null)
  if (fresh === undefined) return failed(usage('Say what clearing took when the bath was fresh: --fresh 0:35.'))
  const before = clearingIn(fresh)
  if (!before.ok) return before
  const after = clearingIn(now)
  return after.ok ? ok({ fresh_s: before.value, now_s: after.value, family }) : after
}

const KINDS: Readonly<Record<'sodium' | 'ammonium', FixerKind>> = {
  sodium: 'sodium-thiosulfate',
  ammonium: 'ammonium-thiosulfate',
}

function bathBy(options: FixOptions, made: Test[] | null, system: UnitSystem): Result<Bath | null> {
  const volumes = volumesOf(options, ['volume', 'bottle', 'fill', 'carried'], system)
  if (!volumes.ok) return volumes
  const { volume, bottle, fill, carried = CARRIED_OUT.perRoll } = volumes.value
  if (volume === undefined)
    return made === null && (options.film ?? []).length === 0
      ? ok(null)
      : failed(usage('Say how much fixer was mixed: --volume 1L.'))
  if ((bottle === undefined) !== (fill === undefined))
    return failed(usage('--bottle and --fill go together: what the bottle holds now, and what the tank takes.'))
  const numbers = numbersOf(options, ['rollsPerLitre', 'silverLimit', 'rollsPerFill'])
  if (!numbers.ok) return numbers
  const film = all((options.film ?? []).map(fixedFilmIn))
  if (!film.ok) return film
  const silver = options.silver === undefined ? ok(null) : pairOf('silver', options.silver, '5=0.6')
  if (!silver.ok) return silver
  const tests = testsBy(options, made)
  if (!tests.ok) return tests
  const { rollsPerLitre = UNKNOWN_CAPACITY.acid, silverLimit, rollsPerFill = 1 } = numbers.value
  return ok({
    kind: KINDS[options.kind ?? 'ammonium'],
    volume_ml: volume,
    rolls_per_litre: rollsPerLitre,
    film: film.value,
    ...(silverLimit === undefined ? {} : { silver_limit_g_per_l: silverLimit }),
    ...(silver.value === null ? {} : { silver: { g_per_m2: silver.value[0], share: silver.value[1] } }),
    ...(tests.value === null ? {} : { tests: tests.value }),
    ...(bottle === undefined || fill === undefined
      ? {}
      : { bottle: { holds_ml: bottle, fill_ml: fill, rolls_per_fill: rollsPerFill, lost_ml: carried } }),
  })
}

/** The fresh time is said, or the test at no rolls is it. */
function testsBy({ fresh }: FixOptions, made: Test[] | null): Result<Bath['tests'] | null> {
  if (made === null) return ok(null)
  if (fresh !== undefined) {
    const time = clearingIn(fresh)
    return time.ok ? ok({ fresh_s: time.value, made }) : time
  }
  const first = made.find(({ rolls }) => rolls === 0)
  return first === undefined
    ? failed(usage('Say what clearing took when the bath was fresh: a row “0, 0:35”, or --fresh 0:35.'))
    : ok({ fresh_s: first.clearing_s, made })
}
