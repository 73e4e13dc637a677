import { BENCH, OWNER } from './roles.js'
import * as register from './schemas/register.js'

const MEBIBYTE = 1024 * 1024

/** Routes of the register of rolls as a whole. */
export const routesOfRegister = {
  exportRegister: {
    method: 'GET',
    roles: BENCH,
    writes: false,
    path: '/api/rolls/register',
    summary: 'The whole register of rolls: their ways, orders and films.',
    answer: register.RollRegister,
  },
  exportRegisterTable: {
    method: 'GET',
    roles: BENCH,
    writes: false,
    path: '/api/rolls/register.csv',
    summary: 'The same as a table (RFC 4180).',
    answer: 'text/csv',
  },
  importRegister: {
    method: 'POST',
    // It writes who did what, so it is not for every device.
    roles: OWNER,
    writes: true,
    path: '/api/rolls/register',
    summary: 'Takes an exported register in, all of it or nothing; what is there already stays.',
    body: register.ImportRegister,
    bodyLimit: 64 * MEBIBYTE,
    answer: register.ImportedRegister,
  },
} as const
