import { describe } from 'vitest'
import { House } from './house.js'
import { killsAreSurvived } from './kills.js'

describe('kill -9 of the server on SQLite', () => killsAreSurvived(async () => House.onSqlite()))
