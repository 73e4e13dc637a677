import { type Problem, problem } from '../../kernel/index.js'
import type { VesselStatement, VesselRecord as View } from '../../wire/index.js'
import { nameTaken } from '../names.js'
import { type Stated, standingOf, statementCommands } from '../statements.js'
import type { Rooms } from '../store.js'

const commands = statementCommands<VesselStatement>({
  what: 'vessel',
  feed: 'vessels',
  port: (rooms) => rooms.vessels,
  wrong: (statement, others) => impossible(statement) ?? taken(statement, others),
})

const taken = (statement: VesselStatement, others: readonly Stated<VesselStatement>[]): Problem | null =>
  nameTaken(
    'vessel',
    statement.name,
    others.map((other) => other.statement.name),
    'statement.name',
  )

function impossible(statement: VesselStatement): Problem | null {
  if (statement.kind === 'tank') {
    const said = statement.holds.map(({ format, reels }) => `${format}:${reels}`)
    return new Set(said).size === said.length
      ? null
      : problem('vessel.said-twice', { name: statement.name }, 'statement.holds')
  }
  if (statement.kind === 'reel' || statement.marked_every_ml <= statement.holds_ml) return null
  const { marked_every_ml: marks, holds_ml: holds } = statement
  return problem('vessel.marks-beyond', { marks, holds }, 'statement.marked_every_ml')
}

export const viewOfVessel = (vessel: Stated<VesselStatement>): View => ({
  ...standingOf(vessel),
  statement: vessel.statement,
})

export const { keep: keepVessel, correct: correctVessel, remove: removeVessel, undo: undoVessel } = commands

export async function listVessels(rooms: Rooms): Promise<{ vessels: View[] }> {
  return { vessels: (await rooms.vessels.all()).map(viewOfVessel) }
}
