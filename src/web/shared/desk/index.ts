export * from './client.js'
export * from './queries.js'
export { useRemoval, useWayBack } from './useWayBack.js'
