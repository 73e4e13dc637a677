export * from './development/index.js'
export * from './thermometry/index.js'
