import { writePartialDay } from '../../../../kernel/index.js'
import { writeFormat } from '../../../../planning/index.js'
import { say, type Writer } from '../../../../words/index.js'
import type { RollRecord } from '../../../shared/api/index.js'

type Revision = RollRecord['revisions'][number]

interface Correction {
  readonly revision: number
  readonly at: string
  readonly by: string
  /** `film: Tarn 100 → Tarn 400`, one for each thing that changed. */
  readonly changes: readonly string[]
}

/** Every time that something was said of a roll, oldest first, with what it changed. */
export const correctionsOf = ({ revisions }: Pick<RollRecord, 'revisions'>, writer: Writer): Correction[] =>
  revisions.map((revision, place) => {
    const before = revisions[place - 1]
    const [now, then] = [saidBy(revision, writer), before ? saidBy(before, writer) : {}]
    const changes = before ? Object.keys(now).filter((what) => now[what] !== then[what]) : []
    return {
      revision: revision.revision,
      at: revision.at,
      by: revision.by,
      changes: changes.map((what) => `${what}: ${then[what]} → ${now[what]}`),
    }
  })

/** What a revision says, thing by thing, in words. */
function saidBy({ statement, order_id }: Revision, writer: Writer): Record<string, string> {
  const day = (value: string | null) => (value === null ? 'unknown' : writePartialDay(value))
  return {
    film: statement.film,
    format: writeFormat(statement),
    chemistry: say('rolls.chemistry', { process: statement.process }, writer),
    index: String(statement.exposure_index ?? 'unknown'),
    // Said without the index it was exposed at: that is a thing of its own.
    wanted: say('rolls.wanted', { exposed_at: null, wanted: statement.treatment }, writer),
    exposed: day(statement.exposed),
    'expired since': day(statement.expired_since),
    remarks: statement.remarks.map((remark) => say('rolls.remark', { remark }, writer)).join(', ') || 'none',
    whose: statement.whose ?? 'own film',
    order: order_id === null ? 'none' : 'another order',
    due: statement.due === null ? 'no day' : writePartialDay(statement.due),
    note: statement.note === '' ? 'none' : statement.note,
  }
}
