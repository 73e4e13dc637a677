import { spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import ts from 'typescript'
import { describe, expect, it } from 'vitest'
import { tempFolders } from '../support/folders.js'

const root = fileURLToPath(new URL('../..', import.meta.url))
const newFolder = tempFolders()

/** The files that packing takes along, without writing the archive. */
function packed(): string[] {
  const ran = spawnSync('npm', ['pack', '--dry-run', '--json', '--ignore-scripts'], {
    cwd: root,
    encoding: 'utf8',
    maxBuffer: 64_000_000,
  })
  return (JSON.parse(ran.stdout) as [{ files: { path: string }[] }])[0].files.map(({ path }) => path)
}

/** A project that has the packed library among its modules; only what the library is made of is copied. */
function projectWith(files: readonly string[]): string {
  const project = newFolder()
  const wanted = files.filter((path) => path === 'package.json' || /^dist\/(science|kernel)\//.test(path))
  for (const path of wanted) {
    const to = join(project, 'node_modules', 'wetside', path)
    mkdirSync(dirname(to), { recursive: true })
    cpSync(join(root, path), to)
  }
  writeFileSync(join(project, 'package.json'), '{ "type": "module" }')
  return project
}

const run = (project: string, code: string) => {
  writeFileSync(join(project, 'asks.mjs'), code)
  return spawnSync(process.execPath, ['asks.mjs'], { cwd: project, encoding: 'utf8' })
}

describe('import … from "wetside/science"', () => {
  const files = packed()
  const project = projectWith(files)

  it('is in the package, and no tests of ours, data or secrets are', () => {
    expect(files).toContain('dist/science/index.js')
    expect(files).toContain('dist/science/index.d.ts')
    expect(files.filter((path) => /^(data|test-output|node_modules)\/|\.env/.test(path))).toEqual([])
  })

  it('answers from an installed copy, with nothing else installed', () => {
    const { stdout, stderr } = run(
      project,
      `import { defineBasis, dose, molarMass } from 'wetside/science'
       const basis = defineBasis({ kind: 'ordinary', points: [{ temperature: 20, time: 480 }], coefficient: 2.5 })
       const readings = [{ at: 0, temperature: 20 }, { at: 480, temperature: 24 }]
       console.log(dose(basis.value, readings).value.meanRate.toFixed(4), molarMass('Na2S2O3.5H2O').value.toFixed(2))
       console.log(dose(basis.value, []).problem.code)`,
    )
    expect(stderr).toBe('')
    expect(stdout).toMatch(/^1\.2079 248\.1\d\n[a-z]+\.[a-z-]+\n$/)
  })

  it('has one door', () => {
    expect(run(project, "import 'wetside/dist/kernel/index.js'").stderr).toContain('ERR_PACKAGE_PATH_NOT_EXPORTED')
    expect(run(project, "import 'wetside'").status).not.toBe(0)
  })

  it('brings its types along', { timeout: 60_000 }, () => {
    const asks = "import { molarMass } from 'wetside/science'\nconst found = molarMass('NaCl')\n"
    const right = join(project, 'right.mts')
    const wrong = join(project, 'wrong.mts')
    writeFileSync(right, `${asks}if (found.ok) found.value.toFixed(2)`)
    writeFileSync(wrong, `${asks}if (found.ok) found.value.oxygen`)
    const program = ts.createProgram([right, wrong], {
      module: ts.ModuleKind.NodeNext,
      moduleResolution: ts.ModuleResolutionKind.NodeNext,
      target: ts.ScriptTarget.ES2022,
      lib: ['lib.es2022.d.ts'],
      strict: true,
      skipLibCheck: true,
      noEmit: true,
      types: [],
    })
    const errorsIn = (file: string) =>
      ts
        .getPreEmitDiagnostics(program, program.getSourceFile(file))
        .map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, ' '))
    expect(errorsIn(right)).toEqual([])
    expect(errorsIn(wrong).join()).toMatch(/oxygen/)
  })
})
