import { type Millilitres, ok, type Result } from '../../kernel/index.js'
import { MIXING_WATER } from '../../science/index.js'
import { cautionsFor } from './cautions.js'
import type { MixAsked, MixSheet, MixSource, MixStep } from './definition.js'
import { taken } from './takes.js'
import { waterKindFor, waterStep } from './water.js'

/** Part of the volume that a packet is dissolved in: common practice where its label says nothing else. */
const WATER_FIRST = 0.8
/** Hours that a developer from powder stands before it is used: common practice. */
const STANDS = 12

/** A powder in packets goes in whole, part after part: what is in one packet is not the same all through. */
export function packetSheet(asked: MixAsked): Result<MixSheet> {
  const { product, volume, sources, today } = asked
  const parts = product.packageParts.length === 0 ? [''] : product.packageParts
  const packets = parts.map((part) =>
    first(sources.filter((one) => product.packageParts.length === 0 || one.part === part)),
  )
  const names = parts.map((part) => (part === '' ? product.name : `${product.name}, part ${part}`))
  const got = packets.map((packet, i) =>
    taken(
      { name: names[i] as string, amount: packet?.held ?? 0, unit: 'g', from: packet === null ? [] : [packet] },
      today,
    ),
  )
  const water = product.role === 'developer' ? MIXING_WATER.developer : MIXING_WATER.tap
  const begin = waterStep(asked, (volume * WATER_FIRST) as Millilitres, { ...water, cold: false })
  const adds = names.flatMap((name, i): MixStep[] => [
    {
      ...{ do: 'add', name, amount: packets[i]?.held ?? null, unit: 'g', percent: null, swap: null, weighing: null },
      cautions: cautionsFor(product),
    },
    { do: 'dissolve' },
  ])
  return ok({
    doubts: [...got.flatMap(({ doubts }) => doubts), ...begin.doubts],
    takes: got.flatMap(({ takes }) => takes),
    steps: [
      begin.step,
      ...adds,
      { do: 'top-up', to: volume, kind: waterKindFor(product) },
      ...(product.role === 'developer' ? [{ do: 'stand', hours: STANDS, origin: 'practice' } as const] : []),
      { do: 'label' },
    ],
  })
}

/** The one that ends first. */
const first = (packets: readonly MixSource[]): MixSource | null =>
  [...packets]
    .filter(({ held, unit }) => held > 0 && unit === 'g')
    .sort((a, b) => ((a.useBy ?? '9999') < (b.useBy ?? '9999') ? -1 : 1))[0] ?? null
