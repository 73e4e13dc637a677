import { type Celsius, type Grams, type Millilitres, ok, type Reading, type Result } from '../../../../kernel/index.js'
import { guessConstant, type Pour, pourAt, type VesselMaterial, worthInWater } from '../../../../science/index.js'
import type { Room } from '../../../../score/index.js'

/** What surrounds the developer: the room that pulls it, and the tank that it is poured into. */
export interface Around {
  /** Null while the room or the volume is not known. */
  readonly room: Room | null
  /** How warm to pour so that it stands as planned in a tank as warm as the room; null while that is not known. */
  readonly pour: Result<Pour> | null
}

interface Fields {
  readonly room: Reading<Celsius> | null
  readonly volume: Reading<Millilitres> | null
  readonly weight: Reading<Grams> | null
}

const readOf = <T>(reading: Reading<T> | null): T | null => (reading?.kind === 'read' ? reading.value : null)

/** A tank that stood in the room is as warm as the room. A gram for a millilitre is near enough. */
export function aroundOf(fields: Fields, material: VesselMaterial, developer: Celsius | null): Around {
  const [room, volume, weight] = [readOf(fields.room), readOf(fields.volume), readOf(fields.weight)]
  if (room === null || volume === null) return { room: null, pour: null }
  const constant = guessConstant(volume, material, 'air')
  const pulled = constant.ok ? { temperature: room, timeConstant: constant.value.value } : null
  if (weight === null || developer === null) return { room: pulled, pour: null }
  const worth = worthInWater(weight, material)
  const pour = worth.ok
    ? pourAt(developer, volume as number as Grams, [{ water: worth.value, temperature: room }])
    : worth
  return { room: pulled, pour: pour.ok ? ok(pour.value) : pour }
}
