import { type ChildProcess, spawn } from 'node:child_process'
import { mkdirSync } from 'node:fs'
import { createInterface } from 'node:readline'
import { fileURLToPath } from 'node:url'
import { build } from 'vite'

const root = fileURLToPath(new URL('../../../', import.meta.url))

/** Builds a program of this folder into something Node runs; inside the clone, so that it finds the packages. */
export async function buildProgram(name: 'holder' | 'serving'): Promise<string> {
  const outDir = `${root}test-output/store-${name}-${process.pid}`
  mkdirSync(outDir, { recursive: true })
  await build({
    root,
    configFile: false,
    logLevel: 'error',
    build: {
      ssr: `${root}src/store/suite/${name}.ts`,
      outDir,
      rollupOptions: { output: { entryFileNames: `${name}.mjs` } },
    },
  })
  return `${outDir}/${name}.mjs`
}

export interface Holder {
  readonly process: ChildProcess
  /** What it says, line by line, until it ends. */
  readonly lines: AsyncIterable<{ opened?: boolean; code?: string; bench?: string; kept?: string }>
  kill(): Promise<void>
}

export function startHolder(program: string, file: string): Holder {
  const child = spawn(process.execPath, [program, file], { stdio: ['ignore', 'pipe', 'inherit'] })
  const gone = new Promise<void>((resolve) => child.once('close', () => resolve()))
  return {
    process: child,
    lines: parsed(createInterface({ input: child.stdout })),
    async kill() {
      child.kill('SIGKILL')
      await gone
    },
  }
}

export interface Serving {
  readonly url: string
  stop(): Promise<void>
}

/** A server in a process of its own; done when it listens. */
export async function startServing(program: string, environment: Readonly<Record<string, string>>): Promise<Serving> {
  const { DATABASE_URL: _, ...rest } = process.env
  const env = { ...rest, PORT: '0', HOST: '127.0.0.1', ...environment }
  const child = spawn(process.execPath, [program], { env, stdio: ['ignore', 'pipe', 'inherit'] })
  const gone = new Promise<void>((resolve) => child.once('close', () => resolve()))
  const url = await new Promise<string>((resolve, reject) => {
    child.once('exit', (code) => reject(new Error(`the server ended with ${code}`)))
    createInterface({ input: child.stdout }).on('line', (line) => {
      const listening = /^Listening on (http:\S+)$/.exec(line)?.[1]
      if (listening !== undefined) resolve(listening)
    })
  })
  return {
    url,
    async stop() {
      child.kill('SIGKILL')
      await gone
    },
  }
}

async function* parsed(lines: AsyncIterable<string>) {
  for await (const line of lines) yield JSON.parse(line) as Record<string, never>
}
