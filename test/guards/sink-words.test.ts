import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { deskWords, sinkWords } from '../../src/words/index.js'
import { root } from './broken-tree.js'

/** What the page loads for a phone at the sink: the frame, what pages share, and the screens of a run. */
const AT_THE_SINK = [
  'src/web/app',
  'src/web/shared/api',
  'src/web/shared/platform',
  'src/web/shared/ui',
  'src/web/sections/runs/engine',
  'src/web/sections/runs/load',
  'src/web/sections/runs/ready',
  'src/web/sections/runs/run',
  'src/web/sections/runs/plan/Preview.tsx',
  'src/web/sections/runs/names.ts',
  'src/web/sections/runs/warnings.ts',
]
const DESK = Object.keys(deskWords)

/** Codes of sentences for the desk in a source: written out, or the beginning of one that is put together. */
function deskCodesIn(source: string): string[] {
  const whole = [...source.matchAll(/['`]([a-z][a-zA-Z.-]*)['`]/g)].map(([, code]) => code ?? '')
  const begun = [...source.matchAll(/`([a-z-]+\.[a-zA-Z.-]*)\$\{/g)].map(([, code]) => code ?? '')
  return [
    ...whole.filter((code) => DESK.includes(code)),
    ...begun.filter((beginning) => DESK.some((code) => code.startsWith(beginning))),
  ]
}

const filesOf = (path: string): string[] =>
  path.includes('.ts')
    ? [path]
    : readdirSync(join(root, path), { recursive: true, encoding: 'utf8' })
        .filter((name) => /\.tsx?$/.test(name) && !name.includes('.test.'))
        .map((name) => join(path, name))

describe('words of a running tank', () => {
  it('are all among those that a phone at the sink has loaded', () => {
    const files = AT_THE_SINK.flatMap(filesOf)
    expect(files.length).toBeGreaterThan(40)
    const missing = files.flatMap((file) =>
      deskCodesIn(readFileSync(join(root, file), 'utf8')).map((code) => `${file}: ${code}`),
    )
    expect(missing).toEqual([])
  })

  it('would be missed', () => {
    const [code = ''] = DESK
    expect(deskCodesIn(`say('${code}', {}, writer)`)).toEqual([code])
    expect(deskCodesIn(`sayOf(\`${code.slice(0, code.indexOf('.') + 1)}\${kind}\`, {}, writer)`)).toHaveLength(1)
  })

  it('have no code twice', () => {
    expect(DESK.filter((code) => code in sinkWords)).toEqual([])
  })
})
