import { type ChildProcess, spawn } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

const SERVER = fileURLToPath(new URL('serve.mjs', import.meta.url))

export interface RunningHouse {
  readonly address: string
  /** Everything the server has printed so far. */
  readonly printed: () => string
  readonly stop: () => Promise<void>
}

/** Starts the built server on a fresh data folder and any free port, and waits until it listens. */
export async function startHouse(environment: Record<string, string> = {}): Promise<RunningHouse> {
  const folder = mkdtempSync(join(tmpdir(), 'wetside-e2e-'))
  const server = spawn(process.execPath, [SERVER], {
    env: { ...process.env, PORT: '0', HOST: '127.0.0.1', DATA_DIR: folder, ...environment },
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  let printed = ''
  const address = await listening(server, (text) => {
    printed += text
    return printed
  })
  return {
    address,
    printed: () => printed,
    stop: async () => {
      const gone = new Promise((resolve) => server.once('exit', resolve))
      server.kill('SIGTERM')
      await gone
      rmSync(folder, { recursive: true, force: true })
    },
  }
}

function listening(server: ChildProcess, print: (text: string) => string): Promise<string> {
  return new Promise((resolve, reject) => {
    let all = ''
    const hear = (chunk: Buffer) => {
      all = print(chunk.toString())
      const address = /Listening on (http:\/\/\S+)/.exec(all)?.[1]
      if (address) resolve(address)
    }
    server.stdout?.on('data', hear)
    server.stderr?.on('data', hear)
    server.once('exit', (code) => reject(new Error(`The server ended with code ${code} before it listened:\n${all}`)))
  })
}
