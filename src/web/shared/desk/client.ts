// Written by scripts/generate-client.mjs from docs/openapi.json; changes made here are lost.
import {
  type AddCheckInput,
  type AddClassSetInput,
  type AddContainerInput,
  type AddFilmInput,
  type AddOrderInput,
  type AddProductInput,
  type AddThermometerInput,
  type AddVesselInput,
  address,
  type ClassSetResult,
  type ContainerRecord,
  type CorrectContainerInput,
  type CorrectFilmInput,
  type CorrectOrderInput,
  type CorrectProductInput,
  type CorrectRecipeInput,
  type CorrectThermometerInput,
  type CorrectTimeInput,
  type CorrectVesselInput,
  type DiscardInput,
  type FilmRecord,
  type FilmRecords,
  type FindLotsInput,
  type FinishMixInput,
  type HandBackInput,
  type HandOverInput,
  type HandOverRecordQuery,
  type KeepRecipeInput,
  type KeepTimesInput,
  type LotByCodeQuery,
  type LotHeads,
  type LotLabelsQuery,
  type LotView,
  type MakeOrderLinkInput,
  type MeasureContentsInput,
  type MovePortionInput,
  type OrderLink,
  type OrderRecord,
  type OrderRecords,
  type OrderSlipQuery,
  type PairAskedInput,
  type PairView,
  type PastedReading,
  type PastedTextInput,
  type Posted,
  type ProductRecord,
  type ProductRecords,
  type RecipeRecord,
  type RemoveContainerBody,
  type RemoveFilmBody,
  type RemoveOrderBody,
  type RemoveProductBody,
  type RemoveRecipeBody,
  type RemoveThermometerBody,
  type RemoveTimeBody,
  type RemoveVesselBody,
  type RotateBathsInput,
  type Rotated,
  type Shelf,
  type ShelfWashAnswer,
  type ShelfWashInput,
  type StartingProducts,
  type StationBathInput,
  send,
  type TakeBackInput,
  type TestBathInput,
  type ThermometerRecord,
  type TimeRecord,
  type TimeRecords,
  type UndoContainerBody,
  type UndoFilmBody,
  type UndoOrderBody,
  type UndoProductBody,
  type UndoRecipeBody,
  type UndoThermometerBody,
  type UndoTimeBody,
  type UndoVesselBody,
  type UseBathInput,
  type VesselRecord,
  type VesselRecords,
  type WithdrawCheckBody,
} from '../api/index.js'

/** Keeps one or more developing times. */
export const keepTimes = (body: KeepTimesInput) => send<TimeRecords>('POST', '/api/times', { body })

/** Corrects a developing time; the old one stays on record. */
export const correctTime = (id: string, body: CorrectTimeInput) =>
  send<TimeRecord>('PUT', `/api/times/${encodeURIComponent(id)}`, { body })

/** Removes a developing time; undo brings it back. */
export const removeTime = (id: string, body: RemoveTimeBody) =>
  send<TimeRecord>('DELETE', `/api/times/${encodeURIComponent(id)}`, { body })

/** Goes back to the state before the last change. */
export const undoTime = (id: string, body: UndoTimeBody) =>
  send<TimeRecord>('POST', `/api/times/${encodeURIComponent(id)}/undo`, { body })

/** Reads a pasted table line by line; keeps nothing. */
export const readTable = (body: PastedTextInput) => send<PastedReading>('POST', '/api/times/read-table', { body })

/** Adds a thermometer. */
export const addThermometer = (body: AddThermometerInput) =>
  send<ThermometerRecord>('POST', '/api/thermometers', { body })

/** Corrects what is said of a thermometer. */
export const correctThermometer = (id: string, body: CorrectThermometerInput) =>
  send<ThermometerRecord>('PUT', `/api/thermometers/${encodeURIComponent(id)}`, { body })

/** Removes a thermometer; undo brings it back. */
export const removeThermometer = (id: string, body: RemoveThermometerBody) =>
  send<ThermometerRecord>('DELETE', `/api/thermometers/${encodeURIComponent(id)}`, { body })

/** Goes back to the state before the last change. */
export const undoThermometer = (id: string, body: UndoThermometerBody) =>
  send<ThermometerRecord>('POST', `/api/thermometers/${encodeURIComponent(id)}/undo`, { body })

/** Notes one check of a thermometer. */
export const checkThermometer = (id: string, body: AddCheckInput) =>
  send<ThermometerRecord>('POST', `/api/thermometers/${encodeURIComponent(id)}/checks`, { body })

/** Withdraws a check that was wrong. */
export const withdrawCheck = (id: string, body: WithdrawCheckBody) =>
  send<ThermometerRecord>('POST', `/api/checks/${encodeURIComponent(id)}/withdraw`, { body })

/** Several thermometers in one beaker: offsets for all. */
export const addClassSet = (body: AddClassSetInput) => send<ClassSetResult>('POST', '/api/class-sets', { body })

/** Keeps a list of baths of one’s own. */
export const keepRecipe = (body: KeepRecipeInput) => send<RecipeRecord>('POST', '/api/recipes', { body })

/** Changes a list of one’s own; runs keep the list they were made by. */
export const correctRecipe = (id: string, body: CorrectRecipeInput) =>
  send<RecipeRecord>('PUT', `/api/recipes/${encodeURIComponent(id)}`, { body })

/** Removes a list of one’s own; undo brings it back. */
export const removeRecipe = (id: string, body: RemoveRecipeBody) =>
  send<RecipeRecord>('DELETE', `/api/recipes/${encodeURIComponent(id)}`, { body })

/** Goes back to the state before the last change. */
export const undoRecipe = (id: string, body: UndoRecipeBody) =>
  send<RecipeRecord>('POST', `/api/recipes/${encodeURIComponent(id)}/undo`, { body })

/** Orders, newest first. */
export const listOrders = () => send<OrderRecords>('GET', '/api/orders')

/** Notes an order. */
export const addOrder = (body: AddOrderInput) => send<OrderRecord>('POST', '/api/orders', { body })

/** One order with its rolls. */
export const getOrder = (id: string) => send<OrderRecord>('GET', `/api/orders/${encodeURIComponent(id)}`)

/** Corrects an order. */
export const correctOrder = (id: string, body: CorrectOrderInput) =>
  send<OrderRecord>('PUT', `/api/orders/${encodeURIComponent(id)}`, { body })

/** Removes an order that has no rolls; undo brings it back. */
export const removeOrder = (id: string, body: RemoveOrderBody) =>
  send<OrderRecord>('DELETE', `/api/orders/${encodeURIComponent(id)}`, { body })

/** Goes back to the state before the last change. */
export const undoOrder = (id: string, body: UndoOrderBody) =>
  send<OrderRecord>('POST', `/api/orders/${encodeURIComponent(id)}/undo`, { body })

/** Hands an order back when the count is right. */
export const handBack = (id: string, body: HandBackInput) =>
  send<OrderRecord>('POST', `/api/orders/${encodeURIComponent(id)}/hand-back`, { body })

/** Makes a private link that shows how far the order is; its token is shown once. */
export const makeOrderLink = (id: string, body: MakeOrderLinkInput) =>
  send<OrderLink>('POST', `/api/orders/${encodeURIComponent(id)}/links`, { body })

/** Films and what is kept of each. */
export const listFilms = () => send<FilmRecords>('GET', '/api/films')

/** Keeps a film. */
export const keepFilm = (body: AddFilmInput) => send<FilmRecord>('POST', '/api/films', { body })

/** Corrects what is kept of a film. */
export const correctFilm = (id: string, body: CorrectFilmInput) =>
  send<FilmRecord>('PUT', `/api/films/${encodeURIComponent(id)}`, { body })

/** Removes a film; undo brings it back. */
export const removeFilm = (id: string, body: RemoveFilmBody) =>
  send<FilmRecord>('DELETE', `/api/films/${encodeURIComponent(id)}`, { body })

/** Goes back to the state before the last change. */
export const undoFilm = (id: string, body: UndoFilmBody) =>
  send<FilmRecord>('POST', `/api/films/${encodeURIComponent(id)}/undo`, { body })

/** Tanks, reels, graduates and syringes. */
export const listVessels = () => send<VesselRecords>('GET', '/api/vessels')

/** Adds a tank, a reel, a graduate or a syringe. */
export const keepVessel = (body: AddVesselInput) => send<VesselRecord>('POST', '/api/vessels', { body })

/** Corrects what is said of it. */
export const correctVessel = (id: string, body: CorrectVesselInput) =>
  send<VesselRecord>('PUT', `/api/vessels/${encodeURIComponent(id)}`, { body })

/** Removes it; undo brings it back. */
export const removeVessel = (id: string, body: RemoveVesselBody) =>
  send<VesselRecord>('DELETE', `/api/vessels/${encodeURIComponent(id)}`, { body })

/** Goes back to the state before the last change. */
export const undoVessel = (id: string, body: UndoVesselBody) =>
  send<VesselRecord>('POST', `/api/vessels/${encodeURIComponent(id)}/undo`, { body })

/** Products that are kept. */
export const listProducts = () => send<ProductRecords>('GET', '/api/products')

/** Keeps a product. */
export const keepProduct = (body: AddProductInput) => send<ProductRecord>('POST', '/api/products', { body })

/** Generic products by composition, to keep and edit; each says where its figures are from. */
export const startingProducts = () => send<StartingProducts>('GET', '/api/products/starting')

/** Corrects what is kept of a product. */
export const correctProduct = (id: string, body: CorrectProductInput) =>
  send<ProductRecord>('PUT', `/api/products/${encodeURIComponent(id)}`, { body })

/** Removes a product from the list; what is mixed of it stays on the shelf. */
export const removeProduct = (id: string, body: RemoveProductBody) =>
  send<ProductRecord>('DELETE', `/api/products/${encodeURIComponent(id)}`, { body })

/** Goes back to the state before the last change. */
export const undoProduct = (id: string, body: UndoProductBody) =>
  send<ProductRecord>('POST', `/api/products/${encodeURIComponent(id)}/undo`, { body })

/** Bottles, packages and jugs with what is in them and what that can still do. */
export const shelf = () => send<Shelf>('GET', '/api/shelf')

/** Adds a package, a bottle or a jug. */
export const addContainer = (body: AddContainerInput) => send<ContainerRecord>('POST', '/api/containers', { body })

/** Corrects what is said of it; what is in it is corrected by measuring. */
export const correctContainer = (id: string, body: CorrectContainerInput) =>
  send<ContainerRecord>('PUT', `/api/containers/${encodeURIComponent(id)}`, { body })

/** Removes an empty one; undo brings it back. */
export const removeContainer = (id: string, body: RemoveContainerBody) =>
  send<ContainerRecord>('DELETE', `/api/containers/${encodeURIComponent(id)}`, { body })

/** Goes back to the state before the last change. */
export const undoContainer = (id: string, body: UndoContainerBody) =>
  send<ContainerRecord>('POST', `/api/containers/${encodeURIComponent(id)}/undo`, { body })

/** Lots of all times by words, newest first, a page at a time. */
export const findLots = (body: FindLotsInput) => send<LotHeads>('POST', '/api/lots/find', { body })

/** One lot: where it stands and everything that happened to it. */
export const getLot = (id: string) => send<LotView>('GET', `/api/lots/${encodeURIComponent(id)}`)

/** A lot by the code on its label. */
export const lotByCode = (query: LotByCodeQuery) => send<LotView>('GET', address('/api/lots/by-code', query))

/** What was mixed becomes a lot: taken from its packages, in its bottles. */
export const finishMix = (body: FinishMixInput) => send<Posted>('POST', '/api/lots', { body })

/** A bath met film: what is gone is taken, what is poured back is counted. */
export const useBath = (body: UseBathInput) => send<Posted>('POST', '/api/shelf/use', { body })

/** Notes a test of what stands in a bottle. */
export const testBath = (body: TestBathInput) => send<Posted>('POST', '/api/shelf/test', { body })

/** Says which of two fixing baths a bottle is. */
export const stationBath = (body: StationBathInput) => send<Posted>('POST', '/api/shelf/station', { body })

/** Pours a portion over, or tops a bath up. */
export const movePortion = (body: MovePortionInput) => send<Posted>('POST', '/api/shelf/move', { body })

/** What was found by measuring, where the book says otherwise. */
export const measureContents = (body: MeasureContentsInput) => send<Posted>('POST', '/api/shelf/measure', { body })

/** A spent bath leaves its bottle, into a jug. */
export const discard = (body: DiscardInput) => send<Posted>('POST', '/api/shelf/discard', { body })

/** A jug of waste is given to whoever takes it. */
export const handOver = (body: HandOverInput) => send<Posted>('POST', '/api/shelf/hand-over', { body })

/** Takes an entry back by a further one; both stay on record. */
export const takeBack = (id: string, body: TakeBackInput) =>
  send<Posted>('POST', `/api/shelf-entries/${encodeURIComponent(id)}/take-back`, { body })

/** Two fixing baths in a row: whether the first is to go and the second to move up. */
export const pairOfBaths = (body: PairAskedInput) => send<PairView>('POST', '/api/shelf/two-baths', { body })

/** The first bath goes to the jug, the second becomes the first, a fresh one the second. */
export const rotateBaths = (body: RotateBathsInput) => send<Rotated>('POST', '/api/shelf/rotate', { body })

/** What a wash leaves in film, judged by the fixer that it comes from; after a spent one there is no verdict. */
export const washFromBottle = (body: ShelfWashInput) => send<ShelfWashAnswer>('POST', '/api/shelf/wash', { body })

/** Where to open: The slip of an order to print; with the token of a link that stands, with its code. */
export const orderSlipAddress = (id: string, query: OrderSlipQuery = {}): string =>
  address(`/api/orders/${encodeURIComponent(id)}/slip.pdf`, query)

/** Where to open: Labels of bottles to print, one a lot: a sheet, or small ones of a roll. */
export const lotLabelsAddress = (query: LotLabelsQuery): string => address('/api/lots/labels.pdf', query)

/** Where to open: The record of a hand-over to print: when, to whom, how much. */
export const handOverRecordAddress = (id: string, query: HandOverRecordQuery = {}): string =>
  address(`/api/shelf-entries/${encodeURIComponent(id)}/hand-over.pdf`, query)

/** Where to open: Everything that went into jugs and out of them, as a table. */
export const wasteLogAddress = (): string => address('/api/shelf/waste-log.csv')
