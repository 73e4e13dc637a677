import { type ChildProcess, spawn } from 'node:child_process'
import { copyFileSync, existsSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { createInterface } from 'node:readline'
import { fileURLToPath } from 'node:url'
import Database from 'better-sqlite3'
import pg from 'pg'
import type { Data, Row } from './data.js'
import { TABLE_NAMES } from './data.js'

const main = new URL('../../dist/server/main.js', import.meta.url)
/** Loads the program and waits for a word before it starts, so that loading does not add to the time of a restart. */
const program = `const { start } = await import('${main.href}'); process.stdin.once('data', () => start())`

/** A server on one database that is killed and started again, and a look at its data from outside. */
export class House {
  url = ''
  /** The last of what the running server complained of. */
  complained = ''
  private running: ChildProcess | undefined
  private next: ChildProcess

  constructor(
    private readonly folder: string,
    private readonly databaseUrl: string | undefined,
  ) {
    this.next = this.load()
  }

  static onSqlite = (): House => new House(mkdtempSync(join(tmpdir(), 'wetside-crash-')), undefined)
  static onPostgres = (url: string): House => new House(mkdtempSync(join(tmpdir(), 'wetside-crash-')), url)

  /** Starts the loaded program; done when it listens. */
  async start(): Promise<void> {
    const server = this.next
    this.running = server
    server.stdin?.write('start\n')
    this.complained = ''
    server.stderr?.on('data', (chunk) => {
      this.complained = (this.complained + chunk).slice(-2000)
    })
    this.url = await listening(server)
    this.next = this.load()
  }

  /** kill -9, and waits until the process is gone. */
  async kill(): Promise<void> {
    const server = this.running
    this.running = undefined
    if (server) await killed(server)
  }

  async close(): Promise<void> {
    await Promise.all([this.kill(), killed(this.next)])
    rmSync(this.folder, { recursive: true, force: true })
  }

  /** Every row of every table, read past the server; nothing may be writing. */
  data(): Promise<Data> {
    return this.databaseUrl === undefined ? this.dataOfSqlite() : dataOfPostgres(this.databaseUrl)
  }

  private load(): ChildProcess {
    const { DATABASE_URL: _, ...rest } = process.env
    const env = { ...rest, PORT: '0', HOST: '127.0.0.1', DATA_DIR: this.folder }
    return spawn(process.execPath, ['--input-type=module', '-e', program], {
      env: this.databaseUrl === undefined ? env : { ...env, DATABASE_URL: this.databaseUrl },
      cwd: fileURLToPath(new URL('../../', import.meta.url)),
      stdio: ['pipe', 'pipe', 'pipe'],
    })
  }

  /** Looks at a copy: opening the file itself would do the recovery that is the server's to do. */
  private async dataOfSqlite(): Promise<Data> {
    const copy = mkdtempSync(join(tmpdir(), 'wetside-crash-copy-'))
    for (const name of ['wetside.db', 'wetside.db-wal'])
      if (existsSync(join(this.folder, name))) copyFileSync(join(this.folder, name), join(copy, name))
    const database = new Database(join(copy, 'wetside.db'))
    const entries = TABLE_NAMES.map((name) => [name, database.prepare(`select * from ${name}`).all() as Row[]])
    database.close()
    rmSync(copy, { recursive: true, force: true })
    return Object.fromEntries(entries)
  }
}

const START_WITHIN_MS = 20_000

function listening(server: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let errors = ''
    const late = setTimeout(
      () => reject(new Error(`not listening after ${START_WITHIN_MS} ms. ${errors}`)),
      START_WITHIN_MS,
    )
    server.stderr?.on('data', (chunk) => {
      errors = (errors + chunk).slice(-3000)
    })
    server.once('exit', (code) => reject(new Error(`the server ended with ${code}. ${errors}`)))
    if (!server.stdout) throw new Error('no output to read')
    createInterface({ input: server.stdout }).on('line', (line) => {
      const url = /^Listening on (http:\/\/127\.0\.0\.1:\d+)$/.exec(line)?.[1]
      if (url === undefined) return
      clearTimeout(late)
      resolve(url)
    })
  })
}

function killed(server: ChildProcess): Promise<void> {
  if (server.exitCode !== null || server.signalCode !== null) return Promise.resolve()
  const gone = new Promise<void>((resolve) => server.once('exit', () => resolve()))
  server.kill('SIGKILL')
  return gone
}

const BIGINT = 20

async function dataOfPostgres(url: string): Promise<Data> {
  const client = new pg.Client({
    connectionString: url,
    types: { getTypeParser: (oid, format) => (oid === BIGINT ? Number : pg.types.getTypeParser(oid, format)) },
  })
  await client.connect()
  // A transaction of the killed server may still be ending: an exclusive lock waits for it.
  await client.query('begin')
  await client.query('lock table data_version in access exclusive mode')
  const entries: [string, Row[]][] = []
  for (const name of TABLE_NAMES) entries.push([name, (await client.query(`select * from ${name}`)).rows])
  await client.query('rollback')
  await client.end()
  return Object.fromEntries(entries) as Data
}
