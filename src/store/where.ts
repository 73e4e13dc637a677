import { join } from 'node:path'
import { failed, ok, problem, type Result } from '../kernel/index.js'
import type { Database } from './index.js'

type Environment = Readonly<Record<string, string | undefined>>

/** The file, below a data folder, in which the running program writes where it listens. */
export const listeningFile = (folder: string): string => join(folder, 'listening')

/** Where the data lies, from `DATABASE_URL` or `DATA_DIR`; a folder of the user's own when neither is given. */
export function readDatabase(environment: Environment, home: string): Result<Database> {
  const url = environment.DATABASE_URL
  if (url !== undefined && !/^postgres(ql)?:\/\//.test(url))
    return failed(
      problem('environment.bad', {
        name: 'DATABASE_URL',
        value: url,
        right: 'an address like postgres://user@host/name',
      }),
    )
  const folder = environment.DATA_DIR ?? join(home, '.local', 'share', 'wetside')
  return ok(url === undefined ? { kind: 'sqlite', file: join(folder, 'wetside.db') } : { kind: 'postgres', url })
}
