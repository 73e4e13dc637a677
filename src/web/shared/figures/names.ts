import { writeRatio } from '../../../kernel/index.js'
import type { TimeStatement } from '../../../wire/index.js'

/** `ascorbate 1 + 3`, `MQ–borax stock`: the developer as it stands in the tank. */
export const developerOf = ({
  developer,
  dilution_parts,
}: Pick<TimeStatement, 'developer' | 'dilution_parts'>): string =>
  dilution_parts === null ? developer : `${developer} ${writeRatio({ parts: dilution_parts })}`

/** `Corvane 400 at 400 in ascorbate 1 + 3` */
export function nameOf(time: Pick<TimeStatement, 'film' | 'exposure_index' | 'developer' | 'dilution_parts'>): string {
  const index = time.exposure_index === null ? '' : ` at ${time.exposure_index}`
  return `${time.film}${index} in ${developerOf(time)}`
}
