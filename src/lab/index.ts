export type { Actor, Context } from './context.js'
export { benchView, changeSettings, newBench, settleBench } from './house/bench.js'
export { openDemo, removeDemo } from './house/demo.js'
export type { Bench, HousePort } from './house/port.js'
export { today } from './house/today.js'
export {
  addClassSet,
  addThermometer,
  checkThermometer,
  correctThermometer,
  removeThermometer,
  undoThermometer,
  withdrawCheck,
} from './kit/commands.js'
export type { KitPort, ThermometerCheck, ThermometerKind, ThermometerRecord, ThermometerStatement } from './kit/port.js'
export { correctedReading, listThermometers } from './kit/queries.js'
export { correctVessel, keepVessel, listVessels, removeVessel, undoVessel, viewOfVessel } from './kit/vessels.js'
export { CODE_LIFE_MS, listDevices, noteCode, pairDevice, removeDevice } from './people/commands.js'
export type { Device, PairingCode, PeoplePort } from './people/port.js'
export { correctRecipe, getRecipe, keepRecipe, listRecipes, removeRecipe, undoRecipe } from './recipes/commands.js'
export type { OwnRecipe, RecipesPort } from './recipes/port.js'
export { correctRoll, takeInRolls, undoRoll } from './rolls/commands.js'
export { changeRolls, moveRolls, undoBatch } from './rolls/many.js'
export { changePattern, DEFAULT_PATTERN, reserveNumbers, rollNumbering } from './rolls/numbers.js'
export {
  addOrder,
  addOrderLink,
  correctOrder,
  getOrder,
  handBack,
  listOrders,
  orderStanding,
  removeOrder,
  revokeOrderLink,
  undoOrder,
} from './rolls/orders.js'
export type { CountedOut, OrderLink, OrdersPort } from './rolls/orders-port.js'
export type {
  NumberBlock,
  NumberCounter,
  RollEvent,
  RollRecord,
  RollRevision,
  RollState,
  RollsPort,
  RollsWanted,
} from './rolls/port.js'
export { findRolls, getRoll, rollByNumber } from './rolls/queries.js'
export { importRegister, readRegister, registerTable, rollRegister } from './rolls/register/index.js'
export { slipOf, stickerRolls } from './rolls/slip.js'
export { keepView, listViews, removeView, viewOfView } from './rolls/views.js'
export { abandonRun, addRunEvents } from './runs/events.js'
export { planRun } from './runs/plan.js'
export type {
  Progress,
  Received,
  RunRecord,
  RunsPort,
  RunsWanted,
  Verdict,
} from './runs/port.js'
export { eventsAfter, getRun, listRuns, runFollowed } from './runs/queries.js'
export { viewOfEvent } from './runs/shape.js'
export { judgeRun } from './runs/verdicts.js'
export { addContainer, correctContainer, removeContainer, undoContainer } from './shelf/containers.js'
export { costOfRun } from './shelf/costs.js'
export { finishMix } from './shelf/mixing.js'
export { discard, handOver, measureContents, movePortion } from './shelf/moving.js'
export { handOverOf, labelsOf, wasteLog } from './shelf/papers.js'
export type {
  Container,
  Demand,
  LedgerEntry,
  Leg,
  Lot,
  LotsWanted,
  Portion,
  Posting,
  ShelfPort,
} from './shelf/port.js'
export {
  correctProduct,
  keepProduct,
  listProducts,
  removeProduct,
  undoProduct,
  viewOfProduct,
} from './shelf/products.js'
export { findLots, getLot, lotByCode, shelf } from './shelf/queries.js'
export { startingProducts } from './shelf/starting.js'
export { stationBath, takeBack, testBath } from './shelf/testing.js'
export { pairOfBaths, rotateBaths } from './shelf/two-baths.js'
export { useBath } from './shelf/use.js'
export { washFromBottle } from './shelf/washing.js'
export type { Stated, StatementsPort } from './statements.js'
export type { Change, FeedEntry, FeedPort, Rooms, Store, WriteKey } from './store.js'
export { answerTime, answerView, developingTimeOf, groundsOf, type Question, standingTime } from './times/answer.js'
export { correctTime, keepTimes, removeTime, undoTime } from './times/commands.js'
export { correctFilm, keepFilm, listFilms, removeFilm, undoFilm, viewOfFilm } from './times/films.js'
export { readTable } from './times/paste/index.js'
export type { TimeRecord, TimeStatement, TimesPort } from './times/port.js'
export { listTimes } from './times/queries.js'
export { basisOf } from './times/rules.js'
export { statementOf as timeStatementOf, viewOf as viewOfTime } from './times/shape.js'
export { pieceOf } from './waste/film.js'
export { fixView } from './waste/fixer.js'
export { washView } from './waste/wash.js'
