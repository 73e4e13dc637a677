import { type ChildProcess, spawn } from 'node:child_process'
import { mkdirSync } from 'node:fs'
import { createInterface } from 'node:readline'
import { fileURLToPath } from 'node:url'
import { build } from 'vite'

const root = fileURLToPath(new URL('../../../', import.meta.url))

/** Builds `holder.ts` into something Node runs; inside the clone, so that it finds the packages. */
export async function buildHolder(): Promise<string> {
  const outDir = `${root}test-output/store-holder-${process.pid}`
  mkdirSync(outDir, { recursive: true })
  await build({
    root,
    configFile: false,
    logLevel: 'error',
    build: {
      ssr: `${root}src/store/suite/holder.ts`,
      outDir,
      rollupOptions: { output: { entryFileNames: 'holder.mjs' } },
    },
  })
  return `${outDir}/holder.mjs`
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

async function* parsed(lines: AsyncIterable<string>) {
  for await (const line of lines) yield JSON.parse(line) as Record<string, never>
}
