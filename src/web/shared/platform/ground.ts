import { keptOnDevice } from './keep.js'

export type Ground = 'device' | 'light' | 'dim'
const KEY = 'wetside.ground'

/** The ground chosen on this device; by default whatever the device itself is set to. */
export function groundChosen(): Ground {
  const kept = keptOnDevice.read(KEY)
  return kept === 'light' || kept === 'dim' ? kept : 'device'
}

export function chooseGround(ground: Ground): void {
  keptOnDevice.write(KEY, ground === 'device' ? null : ground)
  showGround(ground)
}

export function showGround(ground: Ground): void {
  if (ground === 'device') delete document.documentElement.dataset.ground
  else document.documentElement.dataset.ground = ground
}
