import type { Instant } from '../../../../kernel/index.js'
import type { ClockReading } from '../../../../score/index.js'
import { type DeviceClock, deviceName, pageLife } from '../../../shared/platform/index.js'

/**
 * The clocks of a run on this device. A practice run goes `speed` times as fast: its time is that of the clock,
 * counted so many times from the moment it was planned, and so the same on every device and after a reload.
 */
export class RunClock {
  #serverOffset: number | null = null

  constructor(
    readonly device: DeviceClock,
    readonly speed: number,
    readonly plannedAt: Instant,
  ) {}

  /** Server's clock minus this page's monotonic clock, ms. The first one stands: later ones only drift. */
  metServer(offset: number | null): void {
    this.#serverOffset ??= offset
  }

  get knowsServer(): boolean {
    return this.#serverOffset !== null
  }

  read(): ClockReading {
    const { speed } = this
    return {
      device: deviceName(),
      life: pageLife,
      monotonicMs: Math.round(this.device.monotonic() * speed),
      wallMs: this.#sped(this.device.wall()),
      serverOffsetMs: this.#serverOffset === null ? null : this.#sped(this.#serverOffset),
    }
  }

  #sped(at: number): Instant {
    return Math.round(this.plannedAt + (at - this.plannedAt) * this.speed)
  }
}
