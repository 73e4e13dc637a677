import type { Instant } from '../../kernel/index.js'
import type { EventOf, RunEvent } from './definition.js'

/**
 * A reload takes between these, by the device's clock; a gap outside them is a moved clock or a long absence,
 * and the person is asked. Ours: a page is back within seconds, a clock is set by minutes or hours.
 */
export const RELOAD = { leastMs: -1000, mostMs: 30_000 } as const

/** Two answers to what the time is, for the first moment of the life in doubt. */
export interface ClockDoubt {
  readonly device: string
  readonly life: string
  /** The device's clock is right and so much time went by. */
  readonly byWall: Instant
  /** The clock was moved and the page came straight back. */
  readonly continued: Instant
}

/** What turns a life's monotonic time into instants. */
interface Anchor {
  /** instant = monotonic + base. */
  readonly base: number
}

export interface Clocks {
  readonly instantOf: (event: RunEvent) => Instant
  /** Lives whose time is not known, in order of their names; their events stand by the wall clock meanwhile. */
  readonly doubts: readonly ClockDoubt[]
}

/**
 * The instants of a set of events. Within a life monotonic time decides, from one anchor: the first event that
 * knew the server's clock, else the first event of all, by the device's wall clock as it was then. A life that took over from
 * another without the server is measured from that one's last kept moment; where its wall clock then says more or
 * less than a reload can take, the life is in doubt until `settled` says which. Arrival order changes nothing.
 *
 * `isLive` tells events that no undo has taken back. Cost: n log n.
 */
export function clocksOf(events: readonly RunEvent[], isLive: (event: RunEvent) => boolean): Clocks {
  const lives = new Map<string, RunEvent[]>()
  for (const event of events) lives.set(lifeOf(event), [...(lives.get(lifeOf(event)) ?? []), event])
  const settled = settlements(events.filter(isLive))
  const reckoning = new Reckoning(lives, settled)
  const names = [...lives.keys()].sort()
  const anchors = new Map(names.map((name) => [name, reckoning.anchorOf(name)]))
  return {
    instantOf: (event) => event.statedMs ?? Math.round(event.monotonicMs + (anchors.get(lifeOf(event)) as Anchor).base),
    doubts: names.flatMap((name) => reckoning.doubts.get(name) ?? []),
  }
}

const lifeKey = (device: string, life: string): string => `${device} ${life}`
const lifeOf = ({ device, life }: RunEvent): string => lifeKey(device, life)

type Choice = EventOf<'clock-settled'>['choice']

/** By life; of several for one life the one with the greatest id, which needs no instants to be told. */
function settlements(events: readonly RunEvent[]): Map<string, Choice> {
  const choices = events.filter((event): event is EventOf<'clock-settled'> => event.kind === 'clock-settled')
  choices.sort((a, b) => (a.id < b.id ? -1 : 1))
  return new Map(choices.map((event) => [event.life, event.choice]))
}

class Reckoning {
  readonly doubts = new Map<string, ClockDoubt>()
  readonly #anchors = new Map<string, Anchor>()
  readonly #underWay = new Set<string>()

  constructor(
    readonly lives: ReadonlyMap<string, readonly RunEvent[]>,
    readonly settled: ReadonlyMap<string, Choice>,
  ) {}

  anchorOf(name: string): Anchor {
    const known = this.#anchors.get(name)
    if (known !== undefined) return known
    this.#underWay.add(name)
    const anchor = this.#reckon(name, inOrder(this.lives.get(name) ?? []))
    this.#underWay.delete(name)
    this.#anchors.set(name, anchor)
    return anchor
  }

  #reckon(name: string, events: readonly RunEvent[]): Anchor {
    const served = events.find(({ serverOffsetMs }) => serverOffsetMs !== null)
    if (served !== undefined) return { base: served.serverOffsetMs ?? 0 }
    const first = events[0] as RunEvent
    const resumed = events.find((event): event is EventOf<'resumed'> => event.kind === 'resumed')
    return resumed === undefined ? byWall(first) : this.#after(name, resumed)
  }

  /** The life before: as its own events have it; one that wrote none, or that circles back here, as it was kept. */
  #before({ device, previous }: EventOf<'resumed'>): Anchor {
    const name = lifeKey(device, previous.life)
    if (this.lives.has(name) && !this.#underWay.has(name)) return this.anchorOf(name)
    return previous.serverOffsetMs === null ? byWall(previous) : { base: previous.serverOffsetMs }
  }

  #after(name: string, resumed: EventOf<'resumed'>): Anchor {
    const before = this.#before(resumed)
    const { previous, monotonicMs, wallMs, device, life } = resumed
    const left = before.base + previous.monotonicMs
    const gap = wallMs - previous.wallMs
    const candidates = { byWall: Math.round(left + gap), continued: Math.round(left) }
    const sure = gap >= RELOAD.leastMs && gap <= RELOAD.mostMs
    const choice = this.settled.get(life)
    if (!sure && choice === undefined) this.doubts.set(name, { device, life, ...candidates })
    return { base: (choice === 'continued' ? candidates.continued : candidates.byWall) - monotonicMs }
  }
}

const byWall = ({ wallMs, monotonicMs }: Pick<RunEvent, 'wallMs' | 'monotonicMs'>): Anchor => ({
  base: wallMs - monotonicMs,
})

const inOrder = (events: readonly RunEvent[]): RunEvent[] =>
  [...events].sort((a, b) => a.monotonicMs - b.monotonicMs || (a.id < b.id ? -1 : 1))
