import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { brokenTree, root, runNode, tool } from './broken-tree.js'

const pureFolders = ['kernel', 'science', 'score', 'planning', 'words', 'wire', 'lab']

/** Each would be found in a pure folder. */
const impure: Record<string, string> = {
  'the time now': 'export const now = Date.now()',
  'a date of now': 'export const now = new Date()',
  'a date of now without brackets': 'export const now = new Date',
  'the clock taken aside': 'const now = Date.now\nexport { now }',
  chance: 'export const chance = Math.random()',
  'chance taken apart': 'const { random } = Math\nexport { random }',
  'a timer': 'setTimeout(() => {}, 5)',
  'the monotonic clock': 'export const now = performance.now()',
  'a roundabout clock': 'export const now = globalThis.Date.now()',
  'a Node module': "import { readFileSync } from 'node:fs'\nexport { readFileSync }",
}

const needsSecureContext: Record<string, string> = {
  'the wake lock': "export const lock = () => navigator.wakeLock.request('screen')",
  'a service worker': "export const worker = () => navigator.serviceWorker.register('/w.js')",
  'a random id': 'export const id = () => crypto.randomUUID()',
  cryptography: "export const hash = (data) => crypto.subtle.digest('SHA-256', data)",
  'the clipboard': "export const copy = () => navigator.clipboard.writeText('x')",
  'kept storage': 'export const keep = () => navigator.storage.persist()',
  'web locks': "export const alone = () => navigator.locks.request('x', () => {})",
  'the camera': 'export const look = () => navigator.mediaDevices.getUserMedia({ video: true })',
  'an audio worklet': "export const add = (context) => context.audioWorklet.addModule('/w.js')",
  'an audio worklet node': "export const node = (context) => new AudioWorkletNode(context, 'x')",
  'a notification': "export const say = () => new Notification('x')",
  'a way round by window': 'export const keep = () => window.navigator.storage.persist()',
  'a way round by destructuring':
    'export const f = (source) => {\n  const { clipboard } = source\n  return clipboard\n}',
  'a question by name': "export const has = 'serviceWorker' in window",
}

const selectors: Record<string, string> = {
  'a locator': "export const f = (page) => page.locator('.save')",
  'a test id': "export const f = (page) => page.getByTestId('save')",
  'a dollar': "export const f = (page) => page.$('.save')",
  'two dollars': "export const f = (page) => page.$$('.save')",
  'an evaluating dollar': "export const f = (page) => page.$eval('.save', () => 1)",
  'waiting for a selector': "export const f = (page) => page.waitForSelector('.save')",
  'asking the document': "export const f = (page) => page.evaluate(() => document.querySelector('.save'))",
}

const fileName = (text: string) => `${text.replaceAll(' ', '-')}.ts`
const filesIn = (folder: string, samples: Record<string, string>) =>
  Object.fromEntries(Object.entries(samples).map(([what, code]) => [`${folder}/${fileName(what)}`, `${code}\n`]))

const tree = brokenTree()
let reported = new Set<string>()

beforeAll(() => {
  const config = JSON.parse(readFileSync(join(root, 'biome.json'), 'utf8'))
  const { $schema: _, ...rest } = config
  tree.take('scripts/lint')
  tree.write({
    'biome.json': JSON.stringify({ ...rest, vcs: { enabled: false } }),
    ...Object.assign({}, ...pureFolders.map((folder) => filesIn(`src/${folder}`, impure))),
    'src/science/given.ts': 'export const at = (ms: number) => new Date(ms).getTime() + Math.max(1, 2)\n',
    'src/science/timing.test.ts': 'export const now = Date.now()\n',
    ...filesIn('src/web/sections/times', needsSecureContext),
    ...filesIn('src/web/shared/platform', needsSecureContext),
    ...filesIn('test/e2e', selectors),
    'test/e2e/by-words.ts': "export const f = (page) => page.getByRole('button', { name: 'Save' }).click()\n",
  })
  const { printed } = runNode(
    [tool('@biomejs', 'biome', 'bin', 'biome'), 'lint', '--reporter=json', '--max-diagnostics=none', '.'],
    tree.folder,
  )
  const { diagnostics } = JSON.parse(printed.slice(printed.indexOf('{'), printed.lastIndexOf('}') + 1)) as {
    diagnostics: { severity: string; category: string; location: { path: string } }[]
  }
  const ours = /plugin|noRestricted/
  reported = new Set(
    diagnostics.filter((d) => d.severity === 'error' && ours.test(d.category)).map((d) => d.location.path),
  )
})
afterAll(() => tree.remove())

describe.each(pureFolders)('in %s the linter finds', (folder) => {
  it.each(Object.keys(impure))('%s', (what) => {
    expect(reported).toContain(`src/${folder}/${fileName(what)}`)
  })
})

describe('what may stand in a pure folder', () => {
  it('is a date made of a given instant', () => expect(reported).not.toContain('src/science/given.ts'))
  it('is anything in a test', () => expect(reported).not.toContain('src/science/timing.test.ts'))
})

describe('outside the platform folder of the web app the linter finds', () => {
  it.each(Object.keys(needsSecureContext))('%s', (what) => {
    expect(reported).toContain(`src/web/sections/times/${fileName(what)}`)
    expect(reported).not.toContain(`src/web/shared/platform/${fileName(what)}`)
  })
})

describe('in a browser test the linter finds', () => {
  it.each(Object.keys(selectors))('%s', (what) => {
    expect(reported).toContain(`test/e2e/${fileName(what)}`)
  })
  it('nothing wrong with a role and a name', () => expect(reported).not.toContain('test/e2e/by-words.ts'))
})
