export * from './client.js'
export { useFeed } from './feed.js'
export { sendBackup } from './files.js'
export {
  useBench,
  useDevices,
  useRecipes,
  useRun,
  useRuns,
  useThermometers,
  useTime,
  useTimes,
  useToday,
  useWrite,
} from './queries.js'
export { ApiProblem } from './transport.js'
