import { type Millilitres, ok, type Result } from '../../kernel/index.js'
import { COMMON_MEASURES, floorFor, leastMeasurable, MIXING_WATER, mix } from '../../science/index.js'
import { cautionsFor } from './cautions.js'
import type { MixAsked, MixDoubt, MixSheet, MixStep } from './definition.js'
import { taken } from './takes.js'
import { waterKindFor, waterStep } from './water.js'

/** Part of the volume that is water before a concentrate goes in: common practice, so that nothing meets it neat. */
const WATER_FIRST = 0.75
const LEAST = Math.min(...COMMON_MEASURES.map(leastMeasurable))

/** Concentrates into water; the last part of a ratio is the water, and stock alone has none. */
export function liquidSheet(asked: MixAsked): Result<MixSheet> {
  const { product, volume, parts } = asked
  const mixed = mix(parts ?? [1], volume)
  if (!mixed.ok) return mixed
  const concentrates = parts === null || parts.length === 1 ? mixed.value.parts : mixed.value.parts.slice(0, -1)
  const water = volume - concentrates.reduce((sum, one) => sum + one, 0)
  const names = concentrates.map((_, i) => {
    const part = product.packageParts[i]
    return part === undefined ? product.name : `${product.name}, part ${part}`
  })
  const got = concentrates.map((amount, i) => {
    const part = product.packageParts[i]
    const from = asked.sources.filter((one) => part === undefined || one.part === part)
    return taken({ name: names[i] as string, amount, unit: 'ml', from }, asked.today)
  })
  const floor = underFloor(asked)
  if (!floor.ok) return floor
  const adds = concentrates.map(
    (amount, i): MixStep => ({
      ...{ do: 'add', name: names[i] as string, amount, unit: 'ml', percent: null, swap: null, weighing: null },
      cautions: cautionsFor(product),
    }),
  )
  const kind = waterKindFor(product)
  const first = Math.min(water, volume * WATER_FIRST) as Millilitres
  const begin = water > 0 ? waterStep(asked, first, { ...MIXING_WATER.tap, cold: false }) : null
  return ok({
    doubts: [
      ...got.flatMap(({ doubts }) => doubts),
      ...floor.value,
      ...tooLittle(concentrates, names),
      ...(begin?.doubts ?? []),
    ],
    takes: got.flatMap(({ takes }) => takes),
    steps: [
      ...(begin === null ? [] : [begin.step]),
      ...adds,
      ...(water > 0 ? [{ do: 'top-up', to: volume, kind } as const] : []),
      { do: 'label' },
    ],
  })
}

const tooLittle = (amounts: readonly number[], names: readonly string[]): MixDoubt[] =>
  amounts.flatMap((amount, i) =>
    amount < LEAST
      ? [{ of: 'too-little-to-measure' as const, stops: false as const, name: names[i] as string, amount }]
      : [],
  )

/** The floor of a concentrate a roll, where the label has one and rolls were said. */
function underFloor({ product, volume, parts, rolls }: MixAsked): Result<MixDoubt[]> {
  if (product.floor === null || rolls === undefined || rolls <= 0) return ok([])
  const found = floorFor({ parts: parts ?? [1], volume, floor: product.floor, rolls })
  if (!found.ok) return found
  const { enough, held, needed, volumeNeeded, rolls: carries } = found.value
  if (enough) return ok([])
  return ok([{ of: 'under-floor', stops: false, rolls, carries, held, needed, volumeNeeded }])
}
