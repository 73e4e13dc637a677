import {
  celsius,
  seconds,
  type UnitSystem,
  writeDuration,
  writeRatio,
  writeTemperature,
} from '../../../../kernel/index.js'
import type { TimeStatement } from '../../../../wire/index.js'

export interface PointText {
  readonly key: number
  readonly temperature: string
  readonly time: string
}

/** The form as it is typed: texts only, so that nothing half written is lost. */
export interface TimeDraft {
  readonly film: string
  readonly index: string
  readonly developer: string
  readonly dilution: string
  readonly kind: TimeStatement['kind']
  readonly agitation: string
  readonly points: readonly PointText[]
  readonly sourceWords: string
  readonly sourceOrigin: TimeStatement['source_origin']
  readonly note: string
  readonly law: TimeStatement['law']
  readonly developerClass: TimeStatement['developer_class']
  readonly coefficient: string
  readonly usableFrom: string
  readonly usableTo: string
  readonly windowFrom: string
  readonly windowTo: string
}

export const EMPTY: TimeDraft = {
  film: '',
  index: '',
  developer: '',
  dilution: '',
  kind: 'ordinary',
  agitation: '',
  points: [{ key: 0, temperature: '', time: '' }],
  sourceWords: '',
  sourceOrigin: 'sheet',
  note: '',
  law: 'exponential',
  developerClass: 'unknown',
  coefficient: '',
  usableFrom: '',
  usableTo: '',
  windowFrom: '',
  windowTo: '',
}

/** A kept time as texts to type over, in the bench's units. */
export function draftOf(stated: TimeStatement, units: UnitSystem): TimeDraft {
  const degree = (value: number | undefined) => (value === undefined ? '' : writeTemperature(celsius(value), units))
  return {
    film: stated.film,
    index: stated.exposure_index === null ? '' : String(stated.exposure_index),
    developer: stated.developer,
    dilution: stated.dilution_parts === null ? '' : writeRatio({ parts: stated.dilution_parts }),
    kind: stated.kind,
    agitation: stated.agitation,
    points: stated.points.map((point, key) => ({
      key,
      temperature: degree(point.temperature_c),
      time: writeDuration(seconds(point.time_s)),
    })),
    sourceWords: stated.source_words,
    sourceOrigin: stated.source_origin,
    note: stated.note,
    law: stated.law,
    developerClass: stated.developer_class,
    coefficient: stated.coefficient === null ? '' : String(stated.coefficient),
    usableFrom: degree(stated.usable?.from_c),
    usableTo: degree(stated.usable?.to_c),
    windowFrom: degree(stated.window?.from_c),
    windowTo: degree(stated.window?.to_c),
  }
}
