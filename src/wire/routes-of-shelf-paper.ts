import { BENCH } from './roles.js'
import { IdParams } from './schemas/common.js'
import * as paper from './schemas/shelf-paper.js'

const read = { method: 'GET', roles: BENCH, writes: false } as const

/** Routes of what is printed or handed out of the shelf. */
export const routesOfShelfPaper = {
  lotLabels: {
    ...read,
    path: '/api/lots/labels.pdf',
    summary: 'Labels of bottles to print, one a lot: a sheet, or small ones of a roll.',
    query: paper.LabelsQuery,
    answer: 'application/pdf',
  },
  handOverRecord: {
    ...read,
    path: '/api/shelf-entries/:id/hand-over.pdf',
    summary: 'The record of a hand-over to print: when, to whom, how much.',
    params: IdParams,
    query: paper.RecordQuery,
    answer: 'application/pdf',
  },
  wasteLog: {
    ...read,
    path: '/api/shelf/waste-log.csv',
    summary: 'Everything that went into jugs and out of them, as a table.',
    answer: 'text/csv',
  },
} as const
