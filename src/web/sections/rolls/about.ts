import { writeFormat } from '../../../planning/index.js'
import { say, type Writer } from '../../../words/index.js'
import type { RollSummary } from '../../shared/api/index.js'

type Described = Pick<
  RollSummary,
  'format' | 'frames' | 'sheets' | 'process' | 'exposure_index' | 'treatment' | 'exposed' | 'expired_since' | 'remarks'
>

/** What a roll is, but for its film and its person: `135-36, exposed at 400 in summer 2024`. */
export const aboutRoll = (roll: Described, writer: Writer): string =>
  say(
    'rolls.about',
    {
      cut: writeFormat(roll),
      process: roll.process,
      exposed_at: roll.exposure_index,
      wanted: roll.treatment,
      exposed: roll.exposed,
      expired_since: roll.expired_since,
      remarks: roll.remarks,
    },
    writer,
  )
