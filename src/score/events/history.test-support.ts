import { celsius } from '../../kernel/index.js'
import type { Happening, RunEvent } from './definition.js'
import type { Truth } from './model.test-support.js'

/** One random step of a history: what happens, on which device, and two numbers from 0 to 999 that say how. */
export type Move = readonly [op: number, device: number, a: number, b: number]

interface Life {
  readonly name: string
  /** True second at which the page was loaded; monotonic time counts from there. */
  readonly born: number
  /** Has reached the server. */
  readonly served: boolean
  /** By how much the instants of this life are wrong, seconds, for want of a server. */
  readonly error: number
}

interface Device {
  readonly name: string
  /** Wall clock minus truth, seconds. */
  wall: number
  life: Life
}

export interface History {
  readonly events: readonly RunEvent[]
  readonly truths: readonly Truth[]
  /** Lives whose time nobody can know. */
  readonly doubts: number
  /** True second of the end. */
  readonly end: number
}

const EPOCH = 1_800_000_000_000
/** From deciding to write an event until it is stamped, seconds; of a reload it is part of the absence. */
const WRITING = 0.007

const offsetOf = ({ served, born }: Life): number | null => (served ? Math.round(EPOCH + born * 1000) : null)

const POURS = [0, 1, 2, 3].flatMap((bath) => [['poured-in', bath] as const, ['poured-out', bath] as const])
/** About when each of them is due after the one before, seconds. */
const PACE = [20, 470, 18, 20, 23, 290, 23, 110]

/**
 * Plays moves: pours in and out of order, readings, undo and undo of undo, two devices with wrong clocks, clocks
 * moved by an hour, reloads with and without the server. Beside each event stands what is true of it.
 */
export class Play implements History {
  readonly events: RunEvent[] = []
  readonly truths: Truth[] = []
  doubts = 0
  end = 0
  #poured = 0
  readonly #devices: Device[]

  constructor(moves: readonly Move[]) {
    this.#devices = ['phone', 'tablet'].map((name, i) => this.#device(name, i === 0 ? 0.7 : -40.2))
    for (const move of moves) this.#play(move)
  }

  #device(name: string, wall: number): Device {
    const life = { name: `${name}-1`, born: 0, served: true, error: 0 }
    return { name, wall, life }
  }

  #play([op, which, a, b]: Move): void {
    const device = this.#devices[which % 2] as Device
    if (op < 6) {
      this.#pourNext(device, a)
      return
    }
    this.#pass((a * 170) / 1000)
    const [kind, bath] = POURS[b % 8] as (typeof POURS)[0]
    if (op === 6) this.#write(device, { kind }, bath)
    else if (op < 10) this.#read(device, a, b)
    else if (op < 12) this.#undo(device, b)
    else if (op === 12) device.wall += b % 2 === 0 ? 3600 : -3600
    else if (op === 13) this.#reload(device, a, b)
    else if (op === 14) this.#pourAgain(b)
    else if (b < 30) this.#write(device, { kind: 'abandoned', reason: 'a test' }, null)
    else this.#write(device, b < 500 ? { kind: 'started' } : { kind: 'noted', text: 'x' }, null)
  }

  /** Whole milliseconds, as clocks give them. */
  #pass(seconds: number): void {
    this.end = Math.round((this.end + seconds) * 1000) / 1000
  }

  #pourNext(device: Device, a: number): void {
    const [kind, bath] = POURS[this.#poured % 8] as (typeof POURS)[0]
    this.#pass((PACE[this.#poured % 8] as number) * (0.9 + a / 4000) + 0.013)
    this.#poured += 1
    this.#write(device, { kind }, bath)
  }

  #read(device: Device, a: number, b: number): void {
    const wide = a % 10 === 0 ? 30 : 4
    const temperature = celsius(Math.round((20 + (b / 1000 - 0.5) * wide) * 10) / 10)
    this.#write(device, { kind: 'reading', temperature, confirmed: a % 3 === 0 }, 0)
  }

  #undo(device: Device, b: number): void {
    const of = this.truths[Math.max(0, this.truths.length - 1 - (b % 4))]
    // What a person chose about a clock has its own test.
    if (of === undefined || of.kind === 'clock-settled') return
    this.#write(device, { kind: 'retracted', of: of.id }, null)
  }

  /** The other device presses the same a moment later, or just before. */
  #pourAgain(b: number): void {
    const [kind, bath] = POURS[Math.max(0, this.#poured - 1) % 8] as (typeof POURS)[0]
    this.#write(this.#devices[b % 2] as Device, { kind }, bath)
  }

  #reload(device: Device, a: number, b: number): void {
    const before = device.life
    const wallMs = this.#wallMs(device)
    const [monotonicMs, serverOffsetMs] = [Math.round((this.end - before.born) * 1000), offsetOf(before)]
    const previous = { life: before.name, monotonicMs, wallMs, serverOffsetMs }
    const gap = 0.5 + (a % 20)
    this.#pass(gap)
    const jump = b % 5 === 0 ? 3600 : b % 5 === 1 ? -3600 : 0
    device.wall += jump
    const served = b % 3 === 0
    const asked = !served && jump !== 0
    const settles = asked && b % 2 !== 0
    const error = served ? 0 : before.error + (asked && settles ? -gap - WRITING : jump)
    const name = `${device.name}-${this.events.length + 2}`
    device.life = { name, born: this.end, served, error }
    if (asked && !settles) this.doubts += 1
    this.#write(device, { kind: 'resumed', previous }, null)
    if (settles) this.#write(device, { kind: 'clock-settled', life: name, choice: 'continued' }, null)
  }

  #wallMs = ({ wall }: Device): number => Math.round(EPOCH + (this.end + wall) * 1000)

  #write(device: Device, happening: Happening, bath: number | null): void {
    this.#pass(WRITING)
    const { life } = device
    const id = `e${String(this.events.length).padStart(4, '0')}`
    this.events.push({
      ...happening,
      id,
      device: device.name,
      life: life.name,
      monotonicMs: Math.round((this.end - life.born) * 1000),
      wallMs: this.#wallMs(device),
      serverOffsetMs: offsetOf(life),
      tank: 'A',
      bath,
      actor: 'someone',
    })
    const at = Math.round(EPOCH + (this.end + life.error) * 1000) / 1000
    this.truths.push({ ...happening, id, bath, at })
  }
}
