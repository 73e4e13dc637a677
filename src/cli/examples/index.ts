import { baths } from './baths.js'
import { developing } from './developing.js'
import { keeping } from './keeping.js'
import { mixing } from './mixing.js'
import { negatives } from './negatives.js'
import { rolls } from './rolls.js'
import { shelf } from './shelf.js'
import { waste } from './waste.js'

/**
 * One worked example a command, shown by its `--help` and run by the tests: the line after `$`, then what it prints.
 * A line `< text` before it is given as standard input; \n parts its lines.
 */
export const examples = {
  ...developing,
  ...negatives,
  ...mixing,
  ...baths,
  ...waste,
  ...rolls,
  ...shelf,
  ...keeping,
} as const
