import { useDevices } from './queries.js'

/** Who did something; the owner alone may read the names of the devices. */
export function useNames(): (by: string) => string {
  const devices = useDevices().data ?? []
  return (by) => (by === 'owner' ? 'the owner' : (devices.find(({ id }) => id === by)?.name ?? 'a paired device'))
}
