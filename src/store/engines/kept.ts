import Database from 'better-sqlite3'

/** Everything that was opened, for the life of the process. */
const kept: Database.Database[] = []

/**
 * Opens a data file of which nothing is ever left to the garbage collector: neither the database nor a statement, which
 * is prepared once for each text. Built for Node 24.21 the module ends the whole process when the collector comes to one
 * of its objects while no JavaScript runs (`node_object_wrap.h` of that version asks for an environment that is not
 * there). Closing frees what SQLite holds; the shells that stay are small.
 * A statement may not be asked again while one walks through its rows; and pragmas go through `exec`, since `pragma`
 * prepares statements that nobody keeps.
 */
export function openKept(file: string, options?: Database.Options): Database.Database {
  const database = new Database(file, options)
  const statements = new Map<string, Database.Statement>()
  const prepare = database.prepare.bind(database)
  database.prepare = ((text: string) => {
    const known = statements.get(text)
    if (known !== undefined) return known
    const made = prepare(text)
    statements.set(text, made)
    return made
  }) as typeof database.prepare
  kept.push(database)
  return database
}
