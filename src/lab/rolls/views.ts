import type { KeepView, SavedView } from '../../wire/index.js'
import { nameTaken } from '../names.js'
import { type Stated, statementCommands } from '../statements.js'
import type { Rooms } from '../store.js'

const commands = statementCommands<KeepView>({
  what: 'saved view',
  feed: 'rolls',
  port: (rooms) => rooms.views,
  wrong: (statement, others) =>
    nameTaken(
      'saved view',
      statement.name,
      others.map((other) => other.statement.name),
      'name',
    ),
})

export const viewOfView = ({ id, revision, statement }: Stated<KeepView>): SavedView => ({ id, revision, ...statement })

export const { keep: keepView, correct: correctView, remove: removeView, undo: undoView } = commands

export async function listViews(rooms: Rooms): Promise<{ views: SavedView[] }> {
  return { views: (await rooms.views.all()).map(viewOfView) }
}
