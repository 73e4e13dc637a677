// What must not stand in a committed file: paths of one machine, private addresses, debris of merging.
import { spawnSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

const here = dirname(dirname(fileURLToPath(import.meta.url)))
const root = process.argv[2] ?? here

const forbidden = [
  { what: 'a path of one machine', pattern: /(?<![\w.~-])\/(?:home|root|Users|work|mnt)\/[\w.-]+/ },
  { what: 'a path of one machine', pattern: /[A-Za-z]:\\+Users\\/ },
  { what: 'a temporary folder by name', pattern: /(?<![\w.-])\/tmp\/[\w.-]+/ },
  { what: 'an unfinished merge', pattern: /^(?:<{7}|>{7}) /m },
  { what: 'a registry address', pattern: /https?:\/\/(?!registry\.npmjs\.org\/)[\w.-]*registry[\w.-]*(?::\d+)?\//i },
]
const notText = /\.(?:png|jpg|pdf|woff2?|ttf|sqlite|db|ico|wasm)$/
/** Files that have to spell out what they forbid. */
const spellsItOut = new Set(['scripts/check-names.mjs', 'test/guards/names.test.ts'])

const listed = spawnSync('git', ['ls-files', '-z', '--cached', '--others', '--exclude-standard'], {
  cwd: root,
  encoding: 'utf8',
})
const files = listed.stdout.split('\0').filter((file) => file && !notText.test(file) && !spellsItOut.has(file))
let found = 0
for (const file of files) {
  const text = read(join(root, file))
  for (const { what, pattern } of forbidden) {
    const match = pattern.exec(text)
    if (!match) continue
    found += 1
    console.log(`${file}:${text.slice(0, match.index).split('\n').length}: ${what}: ${match[0]}`)
  }
}
console.log(`${found} forbidden words in ${files.length} files`)
if (files.length === 0) console.log('Not one file was read, so nothing was checked: that is a failure.')
process.exitCode = found > 0 || files.length === 0 ? 1 : 0

/** A file may be deleted but not yet committed so. */
function read(path) {
  try {
    return readFileSync(path, 'utf8')
  } catch {
    return ''
  }
}
