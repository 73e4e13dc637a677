import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { type ProblemCode, registry } from '../../src/kernel/index.js'

const root = fileURLToPath(new URL('../..', import.meta.url))
const codes = Object.keys(registry) as ProblemCode[]

const filesBelow = (folder: string, wanted: (name: string) => boolean): string[] =>
  readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter(wanted)
    .map((name) => readFileSync(join(root, folder, name), 'utf8'))

/** What raises problems: the code of the project without its tests and without the registry itself. */
const code = filesBelow(
  'src',
  (name) => /\.tsx?$/.test(name) && !/\.test\.tsx?$/.test(name) && !name.startsWith(join('kernel', 'problems')),
).join('\n')

/** `One process` → `one-process`, as pages number their headings. */
const slugOf = (heading: string): string =>
  heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N} -]/gu, '')
    .trim()
    .replace(/ /g, '-')

const anchorsOf = (page: string): string[] => {
  const text = readFileSync(join(root, 'docs', 'guide', `${page}.md`), 'utf8')
  return [...text.matchAll(/^#{1,4} (.+)$/gm)].map((heading) => slugOf(heading[1] as string))
}
const pages = new Set(readdirSync(join(root, 'docs', 'guide')).map((name) => name.replace(/\.md$/, '')))

describe('every registered problem', () => {
  it('is raised somewhere', () => {
    expect(codes.filter((one) => !code.includes(`'${one}'`))).toEqual([])
  })

  it('leads to a heading of the guide', () => {
    const lost = codes.filter((one) => {
      const [page, heading] = registry[one].help.split('#') as [string, string]
      return !pages.has(page) || !anchorsOf(page).includes(heading)
    })
    expect(lost.map((one) => `${one}: docs/guide ${registry[one].help}`)).toEqual([])
  })

  it('is a sentence with an end, and needs no value that it does not name', () => {
    for (const one of codes) {
      const { sentence } = registry[one]
      expect(sentence, one).toMatch(/[.}]$/)
      expect(sentence.replace(/\{[a-z]\w*\}/gi, ''), one).not.toMatch(/[{}]/)
    }
  })
})
