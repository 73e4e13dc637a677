// Stands in for fast-check during the long run: every property gets the run's random seed and many times its runs,
// whatever its test asked for. The everyday gate keeps the fixed seeds, so that it fails for what was changed only.
import fc from '../../node_modules/fast-check/lib/fast-check.js'

export * from '../../node_modules/fast-check/lib/fast-check.js'

const seed = asked('WETSIDE_SEED')
const times = asked('WETSIDE_FUZZ')
const everyday = 100

/** A number that is missing would silently mean no runs at all. */
function asked(name) {
  const value = process.env[name]
  if (value && Number.isSafeInteger(Number(value))) return Number(value)
  throw new Error(
    `${name} is ${value ?? 'not set'}; the long run needs WETSIDE_SEED and WETSIDE_FUZZ, both whole numbers.`,
  )
}

export const assert = (property, options = {}) =>
  fc.assert(property, { ...options, seed, numRuns: (options.numRuns ?? everyday) * times })

export default { ...fc, assert }
