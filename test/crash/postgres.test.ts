import { describe, inject } from 'vitest'
import { freshDatabase } from '../../src/store/suite/postgres-server.js'
import { House } from './house.js'
import { killsAreSurvived } from './kills.js'

describe('kill -9 of the server on PostgreSQL', () =>
  killsAreSurvived(async () => House.onPostgres(await freshDatabase(inject('postgres')))))
