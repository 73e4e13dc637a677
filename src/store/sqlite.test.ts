import { describe } from 'vitest'
import { expectOk } from '../kernel/index.js'
import { openStore } from './index.js'
import { backupsBehave } from './suite/backups.js'
import { tempFolders } from './suite/folders.js'
import { world } from './suite/house.js'
import { registersBehave } from './suite/registers.js'
import { rollsBehave } from './suite/rolls.js'
import { roomsBehave } from './suite/rooms.js'
import { runRollsBehave } from './suite/run-rolls.js'
import { runsBehave } from './suite/runs.js'
import { shelfBehaves } from './suite/shelf.js'
import { writesBehave } from './suite/writes.js'

const folder = tempFolders()
const open = async () => expectOk(await openStore({ kind: 'sqlite', file: `${folder()}/data.db` }, world(90)))

describe('rooms on SQLite', () => roomsBehave(open))
describe('rolls on SQLite', () => rollsBehave(open))
describe('registers on SQLite', () => registersBehave(open))
describe('runs on SQLite', () => runsBehave(open))
describe('the shelf on SQLite', () => shelfBehaves(open))
describe('rolls of runs on SQLite', () => runRollsBehave(open))
describe('writes on SQLite', () => writesBehave(open))
describe('backups on SQLite', () => backupsBehave(open))
