export * from './client.js'
export * from './queries.js'
