import { describe } from 'vitest'
import { groups } from './checks/all.js'
import { runChecks } from './checks/check.js'

for (const [name, checks] of Object.entries(groups)) describe(name, () => runChecks(checks))
