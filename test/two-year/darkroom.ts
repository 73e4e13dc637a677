import { type Ids, instantText, type ProblemCode, type Result, type SetClock } from '../../src/kernel/index.js'
import type { Actor, Context, Rooms, Store } from '../../src/lab/index.js'

/** One thing done or tried, in the order in which it happened. */
export interface LogEntry {
  readonly at: string
  readonly by: string
  readonly what: string
  /** `done`, or the code of the problem that came back instead. */
  readonly outcome: 'done' | ProblemCode
}

type Command<T> = (context: Context, rooms: Rooms) => Promise<Result<T>>

/** A record as those who work with it know it. */
interface Known {
  id: string
  revision: number
}

export const OWNER: Actor = { role: 'owner', id: 'owner' }

/** People at one bench, acting through the rooms' commands, with a log of what they did. */
export class Darkroom {
  readonly log: LogEntry[] = []
  /** Developing times by `sheet/place`, thermometers by name. */
  readonly known = new Map<string, Known>()
  private readonly helpers: Actor[] = []
  private actor: Actor = OWNER
  readonly bench: string

  constructor(
    readonly store: Store,
    readonly clock: SetClock,
    readonly ids: Ids,
  ) {
    this.bench = ids.next()
  }

  /** Goes on to a moment; never back, when the evening before it ran late. */
  waitUntil(at: number): void {
    this.clock.advance(Math.max(0, at - this.clock.now()))
  }

  joins(helper: Actor): void {
    this.helpers.push(helper)
  }

  /** Who acts from now on: 0 is the owner, then the paired phones in turn. */
  handsOver(turn: number): void {
    const people = [OWNER, ...this.helpers]
    this.actor = people[turn % people.length] as Actor
  }

  /** Something that must succeed: when it does not, the generator is wrong. */
  async does<T>(what: string, command: Command<T>): Promise<T> {
    const result = await this.tries(what, command)
    if (result.ok) return result.value
    throw new Error(`${what}: ${result.problem.code}: ${result.problem.sentence}`)
  }

  /** A mistake that must be refused with this code. */
  async isRefused(what: string, code: ProblemCode, command: Command<unknown>): Promise<void> {
    const result = await this.tries(what, command)
    const got = result.ok ? 'done' : result.problem.code
    if (got !== code) throw new Error(`${what}: expected ${code}, got ${got}`)
  }

  /** Something that may go either way; half a minute passes with it. */
  async tries<T>(what: string, command: Command<T>): Promise<Result<T>> {
    this.clock.advance(30_000)
    const context: Context = { actor: this.actor, bench: this.bench, clock: this.clock, ids: this.ids }
    const at = instantText(this.clock.now())
    const result = await this.store.write(context, null, (rooms) => command(context, rooms))
    this.log.push({ at, by: this.actor.id, what, outcome: result.ok ? 'done' : result.problem.code })
    return result
  }

  /** The record of that name; asking for one that was never kept is a fault of the generator. */
  of(name: string): Known {
    const known = this.known.get(name)
    if (known === undefined) throw new Error(`Nobody has entered ${name} yet.`)
    return known
  }

  /** Remembers a record as it stands after a change. */
  knows(name: string, { id, revision }: Known): void {
    this.known.set(name, { id, revision })
  }
}

/** Something that happens on an evening. Seasons give lists of them; they run in order of time. */
export interface Episode {
  readonly at: number
  readonly happens: (darkroom: Darkroom) => Promise<void>
}
export type Season = (seed: number) => readonly Episode[]
