import type { PlanDraft, SharedField, TankDraft } from './draft.js'

const SHARED: readonly SharedField[] = ['thermometer', 'room', 'practice', 'note', 'more']

/** More than that nobody serves with two hands. */
export const MOST_TANKS = 3
const NAMES = 'ABCDEFGH'

/** The draft of each tank, whole: its own fields with what all have in common. */
export const tankDrafts = (draft: PlanDraft): PlanDraft[] => [
  draft,
  ...draft.more.map((one): PlanDraft => ({ ...draft, ...one })),
]

/** What a change to one of the tanks is to the whole plan. */
export function changedTank(draft: PlanDraft, place: number, part: Partial<PlanDraft>): Partial<PlanDraft> {
  if (place === 0) return part
  const isShared = ([field]: readonly [string, unknown]) => (SHARED as readonly string[]).includes(field)
  const entries = Object.entries(part)
  const own = Object.fromEntries(entries.filter((entry) => !isShared(entry))) as Partial<TankDraft>
  const shared = Object.fromEntries(entries.filter(isShared)) as Partial<PlanDraft>
  return { ...shared, more: draft.more.map((one, i) => (i === place - 1 ? { ...one, ...own } : one)) }
}

/** One tank more: run as the last one, with the next letter for its name and nothing on its reels yet. */
export function withOneMore(draft: PlanDraft, blank: PlanDraft): Partial<PlanDraft> {
  const drafts = tankDrafts(draft)
  const { recipe, reels, volume, from, time, temperature, material, weight } = drafts.at(-1) ?? draft
  const alike = { recipe, reels, volume, from, time, temperature, material, weight }
  return { more: [...draft.more, { ...ownOf(blank), ...alike, tank: freeName(drafts) }] }
}

/** Without one of the tanks; the next one takes the place of the first. */
export function withoutTank(draft: PlanDraft, place: number): Partial<PlanDraft> {
  const [next, ...rest] = draft.more
  if (place === 0) return next === undefined ? {} : { ...next, more: rest }
  return { more: draft.more.filter((_, i) => i !== place - 1) }
}

function ownOf(draft: PlanDraft): TankDraft {
  const { thermometer: _t, room: _r, practice: _p, note: _n, more: _m, ...own } = draft
  return own
}

function freeName(drafts: readonly PlanDraft[]): string {
  const taken = drafts.map(({ tank }) => tank.trim().toUpperCase())
  return [...NAMES].find((name) => !taken.includes(name)) ?? ''
}
