import { type Clock, failed, type Instant, ok, problem, type Result } from '../kernel/index.js'
import type { Context } from './context.js'

/** What every revised record has in common, whatever it states. */
export interface Revised {
  readonly id: string
  readonly revision: number
  readonly savedAt: Instant
  readonly savedBy: string
  readonly removed: boolean
}

/** The part of a room's port that keeps revisions. */
export interface RevisionPort<R extends Revised> {
  addRevision(record: R): Promise<'added' | 'conflict'>
  newest(id: string): Promise<R | null>
  revision(id: string, revision: number): Promise<R | null>
}

type Stated<R extends Revised> = Omit<R, keyof Revised>

const stamp = (context: { clock: Clock; actor: { id: string } }) => ({
  savedAt: context.clock.now(),
  savedBy: context.actor.id,
})

/** The first revision of a new record. */
export async function keepFirst<R extends Revised>(
  context: Context,
  port: RevisionPort<R>,
  stated: Stated<R>,
): Promise<R> {
  const record = { ...stated, id: context.ids.next(), revision: 1, removed: false, ...stamp(context) } as unknown as R
  await port.addRevision(record)
  return record
}

/**
 * Adds a revision on top of the one the person was looking at. `next` makes it from the newest; a record that
 * somebody else changed meanwhile, or that does not exist, is refused and nothing is written.
 */
export async function revise<R extends Revised>(
  context: Context,
  port: RevisionPort<R>,
  what: string,
  id: string,
  seen: number,
  next: (newest: R) => Promise<Result<R>>,
): Promise<Result<R>> {
  const newest = await port.newest(id)
  if (newest === null) return failed(problem('record.not-found', { what, id }))
  const changed = (current: number) => failed(problem('record.changed-meanwhile', { what, current, seen }))
  if (newest.revision !== seen) return changed(newest.revision)
  const made = await next(newest)
  if (!made.ok) return made
  const record: R = { ...made.value, id, revision: seen + 1, ...stamp(context) }
  return (await port.addRevision(record)) === 'added' ? ok(record) : changed(seen + 1)
}

/** A correction of a record that still stands. */
export const correct =
  <R extends Revised>(what: string, stated: Stated<R>) =>
  async (newest: R): Promise<Result<R>> =>
    newest.removed ? failed(problem('record.removed', { what })) : ok({ ...newest, ...stated })

export const remove =
  <R extends Revised>(what: string) =>
  async (newest: R): Promise<Result<R>> =>
    newest.removed ? failed(problem('record.removed', { what })) : ok({ ...newest, removed: true })

/**
 * The state before the last change, as a new revision: a removal comes back, a correction is taken back, a
 * record just made is removed. Undoing twice is redoing.
 */
export const undo =
  <R extends Revised>(port: RevisionPort<R>) =>
  async (newest: R): Promise<Result<R>> => {
    const before = await port.revision(newest.id, newest.revision - 1)
    return ok(before ?? { ...newest, removed: true })
  }
