import { all, failed, ok, type Result } from '../../kernel/index.js'
import type { IndexQuestion } from '../../wire/index.js'
import { cellsOf, rowsOf } from '../lists.js'
import { usage } from '../output.js'

interface Setting {
  readonly aperture: number
  readonly time_s: number
}

/** `f/11 1/15`, `f/8 2s`: an f-number and a time in seconds. */
export function settingIn(text: string): Result<Setting> {
  const [mark, time, ...rest] = cellsOf(text)
  const aperture = mark?.match(/^f\/?(\d+(?:\.\d+)?)$/i)?.[1]
  const [, above, below] = time?.match(/^(\d+(?:\.\d+)?)(?:\/(\d+(?:\.\d+)?))?s?$/) ?? []
  if (aperture === undefined || above === undefined || rest.length > 0)
    return failed(usage(`“${text}” is not a setting. Write aperture and time, like “f/11 1/15”.`))
  return ok({ aperture: Number(aperture), time_s: Number(above) / Number(below ?? 1) })
}

/** Frames, one a line: `f/8 1/15 0.12`, the density left out where none was read. `base` is taken off. */
export const framesIn = (text: string, base: number): Result<IndexQuestion['frames']> =>
  all(
    rowsOf(text).rows.map((row): Result<IndexQuestion['frames'][number]> => {
      const [aperture = '', time = '', density, ...rest] = cellsOf(row)
      const setting = settingIn(`${aperture} ${time}`)
      if (!setting.ok) return setting
      if (rest.length > 0 || (density !== undefined && !/^\d+(\.\d+)?$/.test(density)))
        return failed(usage(`“${row}” is not a frame. Write its setting and its density, like “f/8 1/15 0.12”.`))
      return ok({ ...setting.value, ...(density === undefined ? {} : { net_density: Number(density) - base }) })
    }),
  )

/** The setting as cameras are marked. */
export const saySetting = ({ aperture, time_s }: Setting): string =>
  `f/${aperture} ${time_s < 0.4 ? `1/${Number((1 / time_s).toFixed(1))}` : `${Number(time_s.toFixed(2))} s`}`
