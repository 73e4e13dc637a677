// Stands in for fast-check during the long run: every property gets the run's random seed and many times its runs,
// whatever its test asked for. The everyday gate keeps the fixed seeds, so that it fails for what was changed only.
import fc from '../../node_modules/fast-check/lib/fast-check.js'

export * from '../../node_modules/fast-check/lib/fast-check.js'

const seed = Number(process.env['WETSIDE_SEED'])
const times = Number(process.env['WETSIDE_FUZZ'])
const everyday = 100

export const assert = (property, asked = {}) =>
  fc.assert(property, { ...asked, seed, numRuns: (asked.numRuns ?? everyday) * times })

export default { ...fc, assert }
