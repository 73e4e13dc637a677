export * from './client.js'
export { useFeed } from './feed.js'
export { sendBackup } from './files.js'
export {
  type Kind,
  ROLLS_HERE,
  useBench,
  useDevices,
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
  useWaitingRolls,
  useWrite,
} from './queries.js'
export { ApiProblem, address, send } from './transport.js'
export { useNames } from './useNames.js'
export { useTodayHere } from './useTodayHere.js'
