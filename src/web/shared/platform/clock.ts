/**
 * The clocks of this device. Everything about a running tank takes its time from here, so that it can be sped up.
 * Both in milliseconds: `monotonic` since the page was loaded, `wall` since 1970, as the device believes.
 */
export interface DeviceClock {
  readonly monotonic: () => number
  readonly wall: () => number
}

export const deviceClock: DeviceClock = { monotonic: () => performance.now(), wall: () => Date.now() }
