import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { brokenTree, runNode, script } from './broken-tree.js'

/** Importer, what it imports, and the rule that has to say no. */
const forbidden: [from: string, to: string, rule: string][] = [
  ['src/kernel/up.ts', '../science/index.js', 'direction-of-kernel'],
  ['src/science/up.ts', '../score/index.js', 'direction-of-science'],
  ['src/score/up.ts', '../planning/index.js', 'direction-of-score'],
  ['src/planning/up.ts', '../lab/index.js', 'direction-of-planning'],
  ['src/lab/up.ts', '../server/index.js', 'direction-of-lab'],
  ['src/lab/sideways.ts', '../store/index.js', 'direction-of-lab'],
  ['src/words/up.ts', '../science/index.js', 'direction-of-words'],
  ['src/wire/values.ts', '../science/index.js', 'types-only-of-wire'],
  ['src/store/up.ts', '../server/index.js', 'direction-of-store'],
  ['src/store/sideways.ts', '../science/index.js', 'direction-of-store'],
  ['src/solver/sideways.ts', '../lab/index.js', 'direction-of-solver'],
  ['src/print/sideways.ts', '../lab/index.js', 'direction-of-print'],
  ['src/server/sideways.ts', '../cli/index.js', 'direction-of-server'],
  ['src/cli/sideways.ts', '../server/index.js', 'direction-of-cli'],
  ['src/web/app/store.ts', '../../store/index.js', 'direction-of-web'],
  ['src/web/app/server.ts', '../../server/index.js', 'direction-of-web'],
  ['src/web/app/solver.ts', '../../solver/index.js', 'direction-of-web'],
  ['src/web/app/lab.ts', '../../lab/index.js', 'direction-of-web'],
  ['src/web/app/values.ts', '../../wire/index.js', 'types-only-of-web'],
  ['src/web/sections/times/next.ts', '../rolls/index.js', 'section-to-section'],
  ['src/web/sections/times/up.ts', '../../app/index.js', 'sections-to-app'],
  ['src/web/shared/up.ts', '../sections/rolls/index.js', 'web-upwards'],
  ['src/score/deep.ts', '../science/development/law.js', 'through-the-door'],
  ['src/science/file.ts', 'node:fs', 'nothing-from-outside-in-science'],
  ['src/science/package.ts', 'some-package', 'nothing-from-outside-in-science'],
  ['src/kernel/file.ts', 'node:path', 'nothing-from-outside-in-kernel'],
  ['src/lab/package.ts', 'some-package', 'nothing-from-outside-in-lab'],
  ['src/wire/package.ts', 'some-package', 'nothing-from-outside-in-wire'],
  ['src/science/circle.ts', './back.js', 'no-cycles'],
  ['src/cli/nowhere.ts', './missing.js', 'resolvable'],
]

const allowed: [from: string, code: string][] = [
  ['src/science/down.ts', "import { x } from '../kernel/index.js'\nexport const y = x\n"],
  ['src/wire/types.ts', "import type { X } from '../science/index.js'\nexport type Y = X\n"],
  ['src/web/app/types.ts', "import type { X } from '../../wire/index.js'\nexport type Y = X\n"],
  ['src/web/sections/times/shared.ts', "import { x } from '../../shared/index.js'\nexport const y = x\n"],
]

const doors = [
  'kernel',
  'science',
  'score',
  'planning',
  'words',
  'wire',
  'lab',
  'store',
  'solver',
  'print',
  'server',
  'cli',
]
  .concat('web/app', 'web/shared', 'web/sections/rolls')
  .map((folder) => `src/${folder}/index.ts`)

const tree = brokenTree()
let printed = ''
beforeAll(() => {
  const door = 'export const x = 1\nexport type X = number\n'
  tree.write({
    'package.json': JSON.stringify({ type: 'module', dependencies: { 'some-package': '1.0.0' } }),
    'node_modules/some-package/package.json': JSON.stringify({
      name: 'some-package',
      version: '1.0.0',
      main: 'index.js',
    }),
    'node_modules/some-package/index.js': door,
    'src/science/development/law.ts': door,
    'src/science/back.ts': "import { x } from './circle.js'\nexport { x }\n",
    ...Object.fromEntries(doors.map((file) => [file, door])),
    ...Object.fromEntries(
      forbidden.map(([from, to]) => [from, `import { x } from '${to}'\nexport const y = x\nexport { x }\n`]),
    ),
    ...Object.fromEntries(allowed),
  })
  printed = runNode([script('check-layers.mjs'), tree.folder], tree.folder).printed
})
afterAll(() => tree.remove())

const complaints = () => printed.split('\n')

describe('the layers', () => {
  it.each(forbidden)('refuse %s → %s by %s', (from, _to, rule) => {
    expect(complaints().some((line) => line.startsWith(`${rule}: `) && line.includes(from))).toBe(true)
  })

  it.each(allowed)('let %s be', (from) => {
    expect(complaints().filter((line) => line.includes(from))).toEqual([])
  })

  it('fail when nothing was cruised', () => {
    const empty = brokenTree()
    empty.write({ 'src/notes.txt': 'no code here' })
    const { code, printed } = runNode([script('check-layers.mjs'), empty.folder], empty.folder)
    empty.remove()
    expect(code).toBe(1)
    expect(printed).toContain('Not one module was cruised')
  })
})
