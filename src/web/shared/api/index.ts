export * from './client.js'
export { useFeed } from './feed.js'
export { sendBackup } from './files.js'
export {
  ROLLS_HERE,
  useBench,
  useDevices,
  useFilms,
  useOrder,
  useOrders,
  useRecipes,
  useRoll,
  useRolls,
  useRollsHere,
  useRollViews,
  useRun,
  useRuns,
  useThermometers,
  useTime,
  useTimes,
  useToday,
  useVessels,
  useWaitingRolls,
  useWrite,
} from './queries.js'
export { ApiProblem } from './transport.js'
