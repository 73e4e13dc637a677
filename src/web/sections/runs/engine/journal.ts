import type { RunEvent } from '../../../../score/index.js'
import {
  type AddRunEventsInput,
  ApiProblem,
  addRunEvents,
  followRunAddress,
  type Run,
} from '../../../shared/api/index.js'
import type { Notebook } from '../../../shared/platform/index.js'
import { eventOf } from './shapes.js'

/** A run as it is kept on this device. */
export interface KeptRun {
  readonly run: Run
  readonly events: readonly RunEvent[]
  /** Ids of those that the server has not acknowledged. */
  readonly unsent: readonly string[]
}

/** What is known of a run by now. */
export interface Written {
  readonly events: readonly RunEvent[]
  readonly unsent: number
  /** The server does not answer. */
  readonly away: boolean
  /** What the server would not take, in its words. */
  readonly refused: string | null
}

const AGAIN_MS = 2000
const BATCH = 100

export const keptUnder = (id: string): string => `run/${id}`

/**
 * Everything that happened in a run: in the page, on this device, and as soon as it answers on the server, which
 * in turn tells what other devices wrote. An event is written down before it is sent and never sent half.
 */
export class Journal {
  #written: Written
  #unsent: readonly string[]
  #lastSeq: number
  #sending = false
  #retry: ReturnType<typeof setTimeout> | undefined
  readonly #listeners = new Set<() => void>()

  constructor(
    readonly run: Run,
    readonly notebook: Notebook,
    kept: KeptRun | undefined,
  ) {
    const known = new Map([...(kept?.events ?? []), ...run.events.map(eventOf)].map((event) => [event.id, event]))
    const acknowledged = new Set(run.events.map(({ event }) => event.id))
    this.#unsent = (kept?.unsent ?? []).filter((id) => !acknowledged.has(id))
    this.#lastSeq = run.last_seq
    this.#written = { events: [...known.values()], unsent: this.#unsent.length, away: false, refused: null }
  }

  readonly written = (): Written => this.#written

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }

  /** Follows the server until the function given back is called. */
  open(): () => void {
    const feed = new EventSource(followRunAddress(this.run.id, { after: this.#lastSeq }))
    feed.addEventListener('happened', (event: MessageEvent<string>) => this.#hear(event.data))
    feed.addEventListener('here', () => void this.send())
    feed.onerror = () => this.#tell({ away: true })
    void this.#keep()
    void this.send()
    return () => {
      feed.close()
      clearTimeout(this.#retry)
    }
  }

  add(event: RunEvent): void {
    this.#unsent = [...this.#unsent, event.id]
    this.#tell({ events: [...this.#written.events, event], unsent: this.#unsent.length })
    void this.#keep()
    void this.send()
  }

  /** Sends what the server has not got; when it does not answer, again a little later. */
  async send(): Promise<void> {
    if (this.#sending) return
    this.#sending = true
    clearTimeout(this.#retry)
    try {
      do await this.#sendBatch()
      while (this.#unsent.length > 0)
      this.#tell({ away: false })
    } catch {
      this.#tell({ away: true })
      this.#retry = setTimeout(() => void this.send(), AGAIN_MS)
    } finally {
      this.#sending = false
    }
  }

  async #sendBatch(): Promise<void> {
    const ids = this.#unsent.slice(0, BATCH)
    if (ids.length === 0) return
    const events = this.#written.events.filter(({ id }) => ids.includes(id))
    try {
      await addRunEvents(this.run.id, { events } as unknown as AddRunEventsInput)
    } catch (fault) {
      // A refusal does not change by asking again; what was refused stays on this device.
      if (!(fault instanceof ApiProblem) || fault.status < 400 || fault.status >= 500) throw fault
      this.#tell({ refused: fault.body.sentence })
    }
    this.#unsent = this.#unsent.filter((id) => !ids.includes(id))
    this.#tell({ unsent: this.#unsent.length })
    await this.#keep()
  }

  #hear(data: string): void {
    const kept = JSON.parse(data) as Run['events'][number]
    this.#lastSeq = Math.max(this.#lastSeq, kept.seq)
    const event = eventOf(kept)
    this.#unsent = this.#unsent.filter((id) => id !== event.id)
    const events = this.#written.events
    const known = events.some(({ id }) => id === event.id)
    this.#tell({ away: false, unsent: this.#unsent.length, ...(known ? {} : { events: [...events, event] }) })
    void this.#keep()
  }

  #tell(part: Partial<Written>): void {
    this.#written = { ...this.#written, ...part }
    for (const listener of this.#listeners) listener()
  }

  #keep(): Promise<void> {
    const kept: KeptRun = { run: this.run, events: this.#written.events, unsent: this.#unsent }
    return this.notebook.write(keptUnder(this.run.id), kept)
  }
}
