import { spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

export const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))))

/** A small tree that breaks a rule on purpose. Call `remove` when done. */
export interface BrokenTree {
  readonly folder: string
  /** Takes a file or folder of the project along, so that the real configuration is what is tried. */
  take(...paths: string[]): void
  write(files: Readonly<Record<string, string>>): void
  remove(): void
}

export function brokenTree(): BrokenTree {
  const folder = mkdtempSync(join(tmpdir(), 'wetside-guard-'))
  return {
    folder,
    take(...paths) {
      for (const path of paths) cpSync(join(root, path), join(folder, path), { recursive: true })
    },
    write(files) {
      for (const [name, text] of Object.entries(files)) {
        mkdirSync(dirname(join(folder, name)), { recursive: true })
        writeFileSync(join(folder, name), text)
      }
    },
    remove: () => rmSync(folder, { recursive: true, force: true }),
  }
}

/** What a Node program printed, on both channels together, and its exit code. */
export function runNode(args: readonly string[], cwd: string): { code: number | null; printed: string } {
  const { status, stdout, stderr } = spawnSync(process.execPath, args, { cwd, encoding: 'utf8' })
  return { code: status, printed: stdout + stderr }
}

/** A tool of the project's own node_modules. */
export const tool = (...path: string[]): string => join(root, 'node_modules', ...path)
export const script = (name: string): string => join(root, 'scripts', name)
