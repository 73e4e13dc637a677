import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { deskProblems } from '../../src/kernel/index.js'
import { deskWords, sinkWords } from '../../src/words/index.js'
import { root } from './broken-tree.js'

/** What the page starts with, what it loads for a run, and what comes right behind: no words come with that. */
const ENTRIES = ['src/web/main.tsx', 'src/web/sections/runs/sink.ts', 'src/web/sections/runs/ready/ReadyScreen.tsx']

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

/** The files of the page that are loaded with these: what is imported at once, and what that imports. */
function loadedWith(entries: readonly string[]): string[] {
  const found = new Set<string>()
  const visit = (file: string) => {
    if (found.has(file)) return
    found.add(file)
    const source = readFileSync(join(root, file), 'utf8')
    for (const [, path = ''] of source.matchAll(/(?:^|\n)(?:import|export|\}) (?!type )[^;]*?from '(\.[^']+)\.js'/g)) {
      const base = join(dirname(file), path)
      const next = ['.ts', '.tsx'].map((ending) => base + ending).find((name) => existsSync(join(root, name)))
      if (next?.startsWith('src/web/')) visit(next)
    }
  }
  for (const entry of entries) visit(entry)
  return [...found]
}

describe('words of a running tank', () => {
  it('are all among those that a phone at the sink has loaded', () => {
    const files = loadedWith(ENTRIES)
    expect(files.length).toBeGreaterThan(60)
    expect(files).toContain('src/web/sections/runs/scoreDrawing.ts')
    expect(files).not.toContain('src/web/sections/times/index.ts')
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

/** What computes for a run on the phone; whatever else these ask of `science` raises no problem of its own. */
const COMPUTES = [
  'src/score',
  'src/kernel/quantities',
  ...['development', 'thermometry', 'thermal'].map((of) => `src/science/${of}`),
]

/** A sheet typed in afterwards, and days as rolls have them: read on pages that bring their own words and problems. */
const AT_A_DESK = ['src/score/paper/', 'src/kernel/quantities/day.ts']

describe('problems of a running tank', () => {
  it('are all among those that a phone at the sink has loaded', () => {
    const computing = COMPUTES.flatMap((folder) =>
      readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
        .filter((name) => name.endsWith('.ts') && !name.includes('.test'))
        .map((name) => join(folder, name))
        .filter((name) => !AT_A_DESK.some((apart) => name.startsWith(apart))),
    )
    const loaded = loadedWith(ENTRIES)
    for (const file of loaded)
      expect(readFileSync(join(root, file), 'utf8'), file).not.toMatch(/readSheet|readDay|readPartialDay/)
    const files = [...computing, ...loaded]
    expect(computing.length).toBeGreaterThan(60)
    const desk = Object.keys(deskProblems)
    expect(desk.length).toBeGreaterThan(20)
    const missing = files.flatMap((file) => {
      const source = readFileSync(join(root, file), 'utf8')
      return desk.filter((code) => source.includes(`'${code}'`)).map((code) => `${file}: ${code}`)
    })
    expect(missing).toEqual([])
  })
})
