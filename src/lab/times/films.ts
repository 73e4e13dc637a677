import { compareNames } from '../../kernel/index.js'
import type { FilmStatement, FilmRecord as View } from '../../wire/index.js'
import { nameTaken } from '../names.js'
import { type Stated, standingOf, statementCommands } from '../statements.js'
import type { Rooms } from '../store.js'
import { soundTolerance } from './tolerance.js'

const commands = statementCommands<FilmStatement>({
  what: 'film',
  feed: 'films',
  port: (rooms) => rooms.films,
  wrong: (statement, others) => {
    const sound = soundTolerance(statement)
    if (!sound.ok) return sound.problem
    return nameTaken(
      'film',
      statement.name,
      others.map((other) => other.statement.name),
      'name',
    )
  },
})

export const viewOfFilm = (film: Stated<FilmStatement>): View => ({ ...film.statement, ...standingOf(film) })

export const { keep: keepFilm, correct: correctFilm, remove: removeFilm, undo: undoFilm } = commands

/** Films in the order of their names. */
export async function listFilms(rooms: Rooms): Promise<{ films: View[] }> {
  const films = (await rooms.films.all()).map(viewOfFilm)
  return { films: films.sort((a, b) => compareNames(a.name, b.name)) }
}
