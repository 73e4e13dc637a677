import { celsius, type Result, seconds } from '../../../kernel/index.js'
import { defineBasis, type TimeBasis } from '../../../science/index.js'
import type { TimeStatement } from '../../../wire/index.js'

const range = (stated: { from_c: number; to_c: number }) => ({ from: celsius(stated.from_c), to: celsius(stated.to_c) })

/** A kept or half-written developing time as the science reckons with it. */
export const basisOf = (stated: TimeStatement): Result<TimeBasis> =>
  defineBasis({
    kind: stated.kind,
    law: stated.law,
    points: stated.points.map((point) => ({ temperature: celsius(point.temperature_c), time: seconds(point.time_s) })),
    developerClass: stated.developer_class,
    ...(stated.coefficient === null ? {} : { coefficient: stated.coefficient }),
    ...(stated.usable === null ? {} : { usable: range(stated.usable) }),
    ...(stated.window === null ? {} : { window: range(stated.window) }),
  })
