import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll } from 'vitest'

/** Makes temporary folders that are gone after the file's tests. */
export function tempFolders(): () => string {
  const made: string[] = []
  afterAll(() => {
    for (const folder of made) rmSync(folder, { recursive: true, force: true })
  })
  return () => {
    const folder = mkdtempSync(join(tmpdir(), 'wetside-test-'))
    made.push(folder)
    return folder
  }
}
