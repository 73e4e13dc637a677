import { BENCH } from './roles.js'
import { IdParams, Seen } from './schemas/common.js'
import * as containers from './schemas/containers.js'
import * as products from './schemas/products.js'
import * as shelf from './schemas/shelf.js'
import * as shelfAsked from './schemas/shelf-asked.js'

const read = { method: 'GET', roles: BENCH, writes: false } as const
const post = { method: 'POST', roles: BENCH, writes: true } as const
const put = { method: 'PUT', roles: BENCH, writes: true } as const
const del = { method: 'DELETE', roles: BENCH, writes: true } as const
const UNDO = 'Goes back to the state before the last change.'

const ofProducts = {
  listProducts: { ...read, path: '/api/products', summary: 'Products that are kept.', answer: products.ProductRecords },
  startingProducts: {
    ...read,
    path: '/api/products/starting',
    summary: 'Generic products by composition, to keep and edit; each says where its figures are from.',
    answer: products.StartingProducts,
  },
  keepProduct: {
    ...post,
    path: '/api/products',
    summary: 'Keeps a product.',
    body: products.AddProduct,
    answer: products.ProductRecord,
  },
  correctProduct: {
    ...put,
    path: '/api/products/:id',
    summary: 'Corrects what is kept of a product.',
    params: IdParams,
    body: products.CorrectProduct,
    answer: products.ProductRecord,
  },
  removeProduct: {
    ...del,
    path: '/api/products/:id',
    summary: 'Removes a product from the list; what is mixed of it stays on the shelf.',
    params: IdParams,
    body: Seen,
    answer: products.ProductRecord,
  },
  undoProduct: {
    ...post,
    path: '/api/products/:id/undo',
    summary: UNDO,
    params: IdParams,
    body: Seen,
    answer: products.ProductRecord,
  },
} as const

const ofContainers = {
  shelf: {
    ...read,
    path: '/api/shelf',
    summary: 'Bottles, packages and jugs with what is in them and what that can still do.',
    answer: shelf.Shelf,
  },
  addContainer: {
    ...post,
    path: '/api/containers',
    summary: 'Adds a package, a bottle or a jug.',
    body: containers.AddContainer,
    answer: containers.ContainerRecord,
  },
  correctContainer: {
    ...put,
    path: '/api/containers/:id',
    summary: 'Corrects what is said of it; what is in it is corrected by measuring.',
    params: IdParams,
    body: containers.CorrectContainer,
    answer: containers.ContainerRecord,
  },
  removeContainer: {
    ...del,
    path: '/api/containers/:id',
    summary: 'Removes an empty one; undo brings it back.',
    params: IdParams,
    body: Seen,
    answer: containers.ContainerRecord,
  },
  undoContainer: {
    ...post,
    path: '/api/containers/:id/undo',
    summary: UNDO,
    params: IdParams,
    body: Seen,
    answer: containers.ContainerRecord,
  },
} as const

const ofLots = {
  findLots: {
    ...post,
    writes: false,
    path: '/api/lots/find',
    summary: 'Lots of all times by words, newest first, a page at a time.',
    body: shelf.FindLots,
    answer: shelf.LotHeads,
  },
  getLot: {
    ...read,
    path: '/api/lots/:id',
    summary: 'One lot: where it stands and everything that happened to it.',
    params: IdParams,
    answer: shelf.LotView,
  },
  lotByCode: {
    ...read,
    path: '/api/lots/by-code',
    summary: 'A lot by the code on its label.',
    query: shelf.LotByCode,
    answer: shelf.LotView,
  },
  finishMix: {
    ...post,
    path: '/api/lots',
    summary: 'What was mixed becomes a lot: taken from its packages, in its bottles.',
    body: shelf.FinishMix,
    answer: shelf.Posted,
  },
} as const

const entry = (name: string, summary: string) =>
  ({ ...post, path: `/api/shelf/${name}`, summary, answer: shelf.Posted }) as const

const ofLedger = {
  useBath: {
    ...entry('use', 'A bath met film: what is gone is taken, what is poured back is counted.'),
    body: shelf.UseBath,
  },
  testBath: { ...entry('test', 'Notes a test of what stands in a bottle.'), body: shelf.TestBath },
  stationBath: { ...entry('station', 'Says which of two fixing baths a bottle is.'), body: shelf.StationBath },
  movePortion: { ...entry('move', 'Pours a portion over, or tops a bath up.'), body: shelf.MovePortion },
  measureContents: {
    ...entry('measure', 'What was found by measuring, where the book says otherwise.'),
    body: shelf.MeasureContents,
  },
  discard: { ...entry('discard', 'A spent bath leaves its bottle, into a jug.'), body: shelf.Discard },
  handOver: { ...entry('hand-over', 'A jug of waste is given to whoever takes it.'), body: shelf.HandOver },
  takeBack: {
    ...post,
    path: '/api/shelf-entries/:id/take-back',
    summary: 'Takes an entry back by a further one; both stay on record.',
    params: IdParams,
    body: shelf.TakeBack,
    answer: shelf.Posted,
  },
} as const

const ofAnswers = {
  pairOfBaths: {
    ...post,
    writes: false,
    path: '/api/shelf/two-baths',
    summary: 'Two fixing baths in a row: whether the first is to go and the second to move up.',
    body: shelfAsked.PairAsked,
    answer: shelfAsked.PairView,
  },
  rotateBaths: {
    ...post,
    path: '/api/shelf/rotate',
    summary: 'The first bath goes to the jug, the second becomes the first, a fresh one the second.',
    body: shelfAsked.RotateBaths,
    answer: shelfAsked.Rotated,
  },
  washFromBottle: {
    ...post,
    writes: false,
    path: '/api/shelf/wash',
    summary:
      'What a wash leaves in film, judged by the fixer that it comes from; after a spent one there is no verdict.',
    body: shelfAsked.ShelfWash,
    answer: shelfAsked.ShelfWashAnswer,
  },
  costOfRun: {
    ...read,
    path: '/api/runs/:id/cost',
    summary: 'What a run took of its baths, by the prices on their packages.',
    params: IdParams,
    answer: shelf.RunCost,
  },
} as const

/** Routes of the shelf: products, what holds something, lots, and the ledger of what went where. */
export const routesOfShelf = { ...ofProducts, ...ofContainers, ...ofLots, ...ofLedger, ...ofAnswers } as const
