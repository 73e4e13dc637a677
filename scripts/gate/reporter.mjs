// A vitest reporter: one line per file while it runs, and a file with counts, failures and the reason of every skip.
import { writeFileSync } from 'node:fs'
import { relative } from 'node:path'

export default class GateReporter {
  result = { passed: 0, failures: [], skipped: [] }

  onTestModuleEnd(module) {
    const name = relative(process.cwd(), module.moduleId)
    const counts = { passed: 0, failed: 0, skipped: 0 }
    for (const test of module.children.allTests()) {
      const { state, errors } = test.result()
      const fullName = `${name} > ${test.fullName}`
      if (state === 'passed') this.result.passed += 1
      else if (state === 'failed') this.result.failures.push({ test: fullName, message: told(errors) })
      else this.result.skipped.push({ test: fullName, reason: test.result().note ?? '' })
      counts[state in counts ? state : 'skipped'] += 1
    }
    this.broken(name, module.errors())
    for (const suite of module.children.allSuites()) this.broken(`${name} > ${suite.fullName}`, suite.errors())
    const took = `${(module.diagnostic().duration / 1000).toFixed(1)} s`
    console.log(`· ${module.ok() ? 'ok    ' : 'FAILED'} ${name} (${spoken(counts)}, ${took})`)
  }

  /** An error outside any test: a file that does not load, a hook that throws. */
  broken(name, errors) {
    if (errors.length > 0) this.result.failures.push({ test: name, message: told(errors) })
  }

  onTestRunEnd(_modules, unhandled) {
    this.broken('outside any test', unhandled)
    writeFileSync(process.env['WETSIDE_TEST_RESULT'], JSON.stringify(this.result, null, 2))
  }
}

const spoken = (counts) =>
  Object.entries(counts)
    .filter(([state, n]) => n > 0 || state === 'passed')
    .map(([state, n]) => `${n} ${state}`)
    .join(', ')

function told(errors) {
  return (errors ?? [])
    .map((error) => {
      const at = error.stacks?.[0]
      const place = at ? `\n  at ${relative(process.cwd(), at.file)}:${at.line}` : ''
      return `${error.name ?? 'Error'}: ${error.message}${error.diff ? `\n${error.diff}` : ''}${place}`
    })
    .join('\n')
}
