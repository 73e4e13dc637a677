import { DEVELOPER_CLASSES } from '../../../science/index.js'
import type { TimeStatement } from '../../../wire/index.js'

type DeveloperClass = TimeStatement['developer_class']

const NAMES: Record<DeveloperClass, string> = {
  unknown: 'not known',
  metol: 'metol alone',
  hydroquinone: 'hydroquinone alone',
  'metol-hydroquinone': 'metol and hydroquinone',
  'phenidone-ascorbate': 'phenidone and ascorbate',
  pyro: 'pyro',
  glycin: 'glycin',
  'p-aminophenol': 'p-aminophenol',
}

/** What a developer develops with, to be chosen from. */
export const DEVELOPER_CLASS_CHOICES = (Object.keys(DEVELOPER_CLASSES) as DeveloperClass[]).map(
  (name) => [name, NAMES[name]] as const,
)
