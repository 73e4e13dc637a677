// Where a browser for the tests lies.
import { accessSync, constants } from 'node:fs'
import { delimiter, join } from 'node:path'

export const chromiumNames = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable']

/** The full path of the first of these programs found in PATH, or undefined. */
export function findProgram(names) {
  for (const name of names) {
    for (const folder of (process.env['PATH'] ?? '').split(delimiter)) {
      const path = join(folder, name)
      if (folder && isExecutable(path)) return path
    }
  }
  return undefined
}

/** The browser the tests drive: CHROMIUM_PATH, else the first found in PATH; undefined when there is none. */
export const findChromium = () => process.env['CHROMIUM_PATH'] ?? findProgram(chromiumNames)

function isExecutable(path) {
  try {
    accessSync(path, constants.X_OK)
    return true
  } catch {
    return false
  }
}
