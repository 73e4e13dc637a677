import { BENCH } from './roles.js'
import { IdParams, Seen } from './schemas/common.js'
import * as plans from './schemas/plans.js'
import * as recipes from './schemas/recipes.js'
import * as runs from './schemas/runs.js'

const read = { method: 'GET', roles: BENCH, writes: false } as const
const post = { method: 'POST', roles: BENCH, writes: true } as const
const put = { method: 'PUT', roles: BENCH, writes: true } as const
const del = { method: 'DELETE', roles: BENCH, writes: true } as const

/** Routes of the lists of baths and of the runs. */
export const routesOfRuns = {
  listRecipes: {
    ...read,
    path: '/api/recipes',
    summary: 'All lists of baths: those that come with the program, then one’s own.',
    answer: recipes.RecipeRecords,
  },
  keepRecipe: {
    ...post,
    path: '/api/recipes',
    summary: 'Keeps a list of baths of one’s own.',
    body: recipes.KeepRecipe,
    answer: recipes.RecipeRecord,
  },
  recipePaper: {
    ...read,
    path: '/api/recipes/:id/list.pdf',
    summary: 'A list of baths to print: reasons, cautions and where its figures come from.',
    params: recipes.RecipeParams,
    query: runs.PaperQuery,
    answer: 'application/pdf',
  },
  correctRecipe: {
    ...put,
    path: '/api/recipes/:id',
    summary: 'Changes a list of one’s own; runs keep the list they were made by.',
    params: recipes.RecipeParams,
    body: recipes.CorrectRecipe,
    answer: recipes.RecipeRecord,
  },
  removeRecipe: {
    ...del,
    path: '/api/recipes/:id',
    summary: 'Removes a list of one’s own; undo brings it back.',
    params: recipes.RecipeParams,
    body: Seen,
    answer: recipes.RecipeRecord,
  },
  undoRecipe: {
    ...post,
    path: '/api/recipes/:id/undo',
    summary: 'Goes back to the state before the last change.',
    params: recipes.RecipeParams,
    body: Seen,
    answer: recipes.RecipeRecord,
  },
  listRuns: {
    ...read,
    path: '/api/runs',
    summary: 'Runs, newest first; by film, a page at a time.',
    query: runs.RunsQuery,
    answer: runs.RunSummaries,
  },
  planRun: {
    ...post,
    path: '/api/runs',
    summary: 'Plans a run: checked, with copies of its lists and times.',
    body: plans.PlanRun,
    answer: runs.Run,
  },
  getRun: {
    ...read,
    path: '/api/runs/:id',
    summary: 'One run with everything that happened.',
    params: IdParams,
    answer: runs.Run,
  },
  runEvents: {
    ...read,
    path: '/api/runs/:id/events',
    summary: 'What happened after a number that was seen.',
    params: IdParams,
    query: runs.EventsQuery,
    answer: runs.RunEvents,
  },
  addRunEvents: {
    ...post,
    path: '/api/runs/:id/events',
    summary: 'Adds what happened; an event sent twice is there once.',
    params: IdParams,
    body: runs.AddRunEvents,
    answer: runs.RunEvents,
  },
  followRun: {
    ...read,
    path: '/api/runs/:id/live',
    summary: 'Events of a run as they come in; replays after Last-Event-ID, else after `after`.',
    params: IdParams,
    query: runs.EventsQuery,
    answer: 'text/event-stream',
  },
  runSheet: {
    ...read,
    path: '/api/runs/:id/sheet.pdf',
    summary: 'The bench sheet of a plan, to print: it can finish the run with a wall clock and a pencil.',
    params: IdParams,
    query: runs.PaperQuery,
    answer: 'application/pdf',
  },
  runRecord: {
    ...read,
    path: '/api/runs/:id/record.pdf',
    summary: 'What became of a run, to print.',
    params: IdParams,
    query: runs.PaperQuery,
    answer: 'application/pdf',
  },
  abandonRun: {
    ...post,
    path: '/api/runs/:id/abandon',
    summary: 'Gives up every tank of a run that is not done, with a reason.',
    params: IdParams,
    body: runs.AbandonRun,
    answer: runs.Run,
  },
  judgeRun: {
    ...post,
    path: '/api/runs/:id/verdicts',
    summary: 'Says what the negatives of a tank look like; a later word corrects an earlier one.',
    params: IdParams,
    body: runs.JudgeRun,
    answer: runs.Run,
  },
} as const
