import { describe, inject } from 'vitest'
import { expectOk } from '../kernel/index.js'
import { openStore } from './index.js'
import { backupsBehave } from './suite/backups.js'
import { world } from './suite/house.js'
import { freshDatabase } from './suite/postgres-server.js'
import { registersBehave } from './suite/registers.js'
import { rollsBehave } from './suite/rolls.js'
import { roomsBehave } from './suite/rooms.js'
import { runRollsBehave } from './suite/run-rolls.js'
import { runsBehave } from './suite/runs.js'
import { shelfBehaves } from './suite/shelf.js'
import { writesBehave } from './suite/writes.js'

const open = async () =>
  expectOk(await openStore({ kind: 'postgres', url: await freshDatabase(inject('postgres')) }, world(91)))

describe('rooms on PostgreSQL', () => roomsBehave(open))
describe('rolls on PostgreSQL', () => rollsBehave(open))
describe('registers on PostgreSQL', () => registersBehave(open))
describe('runs on PostgreSQL', () => runsBehave(open))
describe('the shelf on PostgreSQL', () => shelfBehaves(open))
describe('rolls of runs on PostgreSQL', () => runRollsBehave(open))
describe('writes on PostgreSQL', () => writesBehave(open))
describe('backups on PostgreSQL', () => backupsBehave(open))
