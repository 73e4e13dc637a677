import type { TimeRecord } from '../../../../wire/index.js'

const once = (names: readonly string[]): string[] => [...new Set(names)].sort((a, b) => a.localeCompare(b))

/** Films and developers already spelt on this bench, to choose from while typing. */
export const namesKept = (times: readonly TimeRecord[]) => ({
  films: once(times.map(({ film }) => film)),
  developers: once(times.map(({ developer }) => developer)),
})
