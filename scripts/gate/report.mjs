// What the gate says at the end: failures first, skipped tests by name, a table of budgets, and one last line.
const totalBudget_s = 15 * 60

/** Prints the summary and gives the exit code. `chosen` also names stages that were never reached. */
export function printSummary(results, chosen, total_s) {
  for (const { name, failures = [] } of results) {
    for (const failure of failures) console.log(`\nFAILED in ${name}: ${failure}`)
  }
  for (const { name, skipped } of results) {
    for (const { test, reason } of skipped) console.log(`\nskipped in ${name}: ${test} (${reason})`)
  }
  const count = (of) => results.reduce((sum, result) => sum + of(result), 0)
  const passed = count((result) => result.passed)
  const skipped = count((result) => result.skipped.length)
  const overall = total_s > totalBudget_s
  const failed = count((result) => result.failed) + (overall ? 1 : 0)

  console.log('\nstage    budget    wall   passed  failed  skipped')
  for (const stage of chosen)
    console.log(
      row(
        stage,
        results.find((result) => result.name === stage.name),
      ),
    )
  const over = results.filter((result) => result.wall_s > result.budget_s)
  for (const { name, wall_s, budget_s } of over) {
    console.log(`over budget: ${name} took ${wall_s.toFixed(1)} s of ${budget_s} s`)
  }
  console.log(
    `total ${total_s.toFixed(1)} s of ${totalBudget_s} s${overall ? ': over, which is a failure' : ''}. A stage over its budget is only told; the total over 15 minutes fails.`,
  )
  console.log(`${passed} passed, ${failed} failed, ${skipped} skipped`)
  return failed > 0 ? 1 : 0
}

function row({ name, budget_s }, result) {
  const budget = `${budget_s} s`.padStart(6)
  if (!result) return `${name.padEnd(8)} ${budget}   not run: the install failed`
  const wall = `${result.wall_s.toFixed(1)} s`.padStart(8)
  const counts = [result.passed, result.failed, result.skipped.length].map((n) => String(n).padStart(7)).join(' ')
  return `${name.padEnd(8)} ${budget} ${wall}  ${counts}`
}
