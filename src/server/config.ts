import { networkInterfaces } from 'node:os'
import { failed, ok, problem, type Result } from '../kernel/index.js'
import { type Database, readDatabase } from '../store/index.js'

/** How the program was asked to run, from the environment, checked once. */
export interface Config {
  readonly host: string
  /** 0 takes any free port. */
  readonly port: number
  readonly database: Database
  /** Whether a caller on this machine is the owner. Off behind a reverse proxy, where everybody looks local. */
  readonly loopbackIsOwner: boolean
  /** Further names this server answers to, besides this machine's own. */
  readonly extraHosts: readonly string[]
}

type Environment = Readonly<Record<string, string | undefined>>
const bad = (name: string, value: string, right: string) => failed(problem('environment.bad', { name, value, right }))

/** `PORT`, `HOST`, `DATA_DIR`, `DATABASE_URL`, `LOOPBACK_OWNER`, `EXTRA_HOSTS`. */
export function readConfig(environment: Environment, home: string): Result<Config> {
  const port = environment.PORT ?? '4717'
  if (!/^\d{1,5}$/.test(port) || Number(port) > 65_535) return bad('PORT', port, 'a number from 0 to 65535')
  const owner = environment.LOOPBACK_OWNER ?? 'yes'
  if (owner !== 'yes' && owner !== 'no') return bad('LOOPBACK_OWNER', owner, '“yes” or “no”')
  const database = readDatabase(environment, home)
  if (!database.ok) return database
  return ok({
    host: environment.HOST ?? '0.0.0.0',
    port: Number(port),
    database: database.value,
    loopbackIsOwner: owner === 'yes',
    extraHosts: (environment.EXTRA_HOSTS ?? '')
      .split(',')
      .map((name) => name.trim().toLowerCase())
      .filter(Boolean),
  })
}

/** The addresses under which other devices of the house may reach this machine. */
export const houseAddresses = (): string[] =>
  Object.values(networkInterfaces())
    .flatMap((list) => list ?? [])
    .filter((one) => one.family === 'IPv4' && !one.internal)
    .map((one) => one.address)
