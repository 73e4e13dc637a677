import { DAY_MS, type Instant, instantText, seconds } from '../../kernel/index.js'
import { capacityOf, clearingVerdict, type FixingFamily, KEEPING } from '../../science/index.js'
import type { ContainerStatement, LeftView, ProductStatement } from '../../wire/index.js'
import { fromLedger, toRolls } from './amounts.js'
import { type Bath, type Limit, lastClearing, limitsOf } from './limits.js'

const WEEK_DAYS = 7
/** 2 rolls must not become 1 by the last digit of 12 − 10. */
const NEGLIGIBLE = 1e-6

/** Rolls a day since it came in, over a week at least; null before the first. */
function paceOf({ contents }: Bath, now: Instant): number | null {
  const rolls = contents.uses.reduce((sum, use) => sum + use.rolls, 0)
  if (rolls === 0) return null
  const first = Math.min(contents.since ?? now, ...contents.uses.map(({ at }) => at))
  return rolls / Math.max(WEEK_DAYS, (now - first) / DAY_MS)
}

/** When a limit is met at a pace; null where that cannot be said. */
function endOf({ rolls, days }: Limit, pace: number | null, now: Instant): Instant | null {
  if (days !== null) return now + days * DAY_MS
  if (rolls !== null && rolls <= 0) return now
  return rolls === null || pace === null ? null : now + (rolls / pace) * DAY_MS
}

type Ending = Limit & { readonly at: Instant | null }

/** What ends it first: the fewest rolls; against its age by the date where a pace gives one, else by the part left. */
function deciding(endings: readonly Ending[]): Ending | null {
  const first = (list: readonly Ending[], by: (ending: Ending) => number): Ending | null =>
    list.reduce<Ending | null>((least, one) => (least === null || by(one) < by(least) ? one : least), null)
  const inRolls = first(
    endings.filter(({ rolls }) => rolls !== null),
    ({ rolls }) => rolls as number,
  )
  const byAge = endings.find(({ days }) => days !== null) ?? null
  if (inRolls === null || byAge === null) return inRolls ?? byAge
  const dated = inRolls.at !== null && byAge.at !== null
  return first([inRolls, byAge], ({ at, part }) => (dated ? (at as number) : part))
}

/** Beyond this a date says nothing: the end of what a calendar can hold comes later still. */
const FAR = 50 * 365 * DAY_MS
export const dateText = (at: Instant | null, now: Instant): string | null =>
  at === null || at - now > FAR ? null : instantText(Math.round(at))

/** What a bath can still do, by everything that may end it; the least decides and is named. */
export function leftIn(bath: Bath, now: Instant): LeftView {
  const { limits, fixer } = limitsOf(bath, now)
  const pace = paceOf(bath, now)
  const endings = limits.map((limit): Ending => ({ ...limit, at: endOf(limit, pace, now) }))
  const decides = deciding(endings)
  const rolls = least(limits.map((limit) => limit.rolls))
  return {
    limits: endings.map(({ at, ...limit }) => ({ ...limit, ends: dateText(at, now) })),
    decides: decides?.by ?? null,
    rolls,
    days: least(limits.map((limit) => limit.days)),
    part: least(limits.map(({ part }) => part)),
    ends: dateText(decides?.at ?? null, now),
    whole: wholeOf(bath, limits),
    met: toRolls(bath.contents.met),
    rolls_per_week: pace === null ? null : pace * WEEK_DAYS,
    silver_g_per_l: fixer?.silver ?? null,
    clearing: clearingNow(bath),
    state: limits.length === 0 ? 'unknown' : limits.some(({ part }) => part <= 0) ? 'finished' : 'usable',
    ...repeatUse(bath),
  }
}

const least = (amounts: readonly (number | null)[]): number | null => {
  const known = amounts.filter((amount) => amount !== null)
  return known.length === 0 ? null : Math.min(...known)
}

/** Whole rolls of each family: only the count knows families. */
function wholeOf({ product }: Bath, limits: readonly Limit[]): LeftView['whole'] {
  const inRolls = limits.filter(({ rolls }) => rolls !== null)
  if (inRolls.length === 0) return null
  const of = (family: FixingFamily) => {
    const own = product.family_capacity
    const part = capacityOf({ family, ...(family === 'ordinary' || own === null ? {} : { capacity: own }) })
    const each = inRolls.map(({ by, rolls }) => (rolls ?? 0) * (by === 'count' ? part : 1))
    return Math.floor(Math.min(...each) + NEGLIGIBLE)
  }
  return { ordinary: of('ordinary'), tabular: of('tabular'), 'high-iodide': of('high-iodide') }
}

/** The last clearing test against the fresh bath. */
export function clearingNow({ contents, fresh }: Bath): LeftView['clearing'] {
  const last = lastClearing(contents.tests)
  const baseline = last === null ? null : fresh[last.family]
  if (last === null || baseline === null) return null
  const verdict = clearingVerdict(seconds(baseline), seconds(last.clears_s), last.family)
  if (!verdict.ok) return null
  const { fixFor, verdict: found } = verdict.value
  return { fresh_s: baseline, now_s: last.clears_s, fix_for_s: fixFor, finished: found === 'finished' }
}

/** What repeat use asks for: a longer time next, or replenisher. */
function repeatUse({ contents, product }: Bath): Pick<LeftView, 'next_time_factor' | 'due_ml'> {
  const met = toRolls(contents.met)
  const { longer_percent_per_roll: percent, replenish_ml_per_roll: rate } = product
  // By the film itself, not by what is left of it in the bath: pouring some away spares no replenisher.
  const developed = contents.uses.reduce((sum, { rolls }) => sum + rolls, 0)
  return {
    next_time_factor: percent === null ? null : 1 + (percent / 100) * met,
    due_ml: rate === null ? null : Math.max(0, rate * developed - fromLedger(contents.added)),
  }
}

type Package = Extract<ContainerStatement, { kind: 'package' }>

/** A package ages by its date, and once opened by the days that it then keeps; the earlier decides. */
export function leftInPackage(statement: Package, product: ProductStatement, held: number, now: Instant): LeftView {
  const ends = [dayEnd(statement.use_by), openedEnd(statement.opened, product)].filter((at) => at !== null)
  const end = ends.length === 0 ? null : Math.min(...ends)
  const days = end === null ? null : Math.max(0, (end - now) / DAY_MS)
  const part = held / statement.full
  const source = 'the date on the package, or its days once opened'
  const limits =
    days === null
      ? []
      : [{ by: 'age' as const, rolls: null, days, part: days > 0 ? 1 : 0, origin: 'sheet' as const, source }]
  return {
    limits: limits.map((limit) => ({ ...limit, ends: dateText(end, now) })),
    decides: days === null ? null : 'age',
    rolls: null,
    days,
    part: Math.min(1, part),
    ends: dateText(end, now),
    whole: null,
    met: 0,
    rolls_per_week: null,
    silver_g_per_l: null,
    clearing: null,
    state: days === null ? 'unknown' : days > 0 ? 'usable' : 'finished',
    next_time_factor: null,
    due_ml: null,
  }
}

/** The end of a day by UTC: a use-by date is no matter of hours. */
const dayEnd = (day: string | null): Instant | null => (day === null ? null : Date.parse(`${day}T00:00:00Z`) + DAY_MS)

function openedEnd(opened: string | null, product: ProductStatement): Instant | null {
  const days = product.keeps.full ?? (product.form === 'liquid' ? KEEPING['opened-concentrate'].days.full : null)
  return opened === null || days === null ? null : Date.parse(`${opened}T00:00:00Z`) + days * DAY_MS
}
