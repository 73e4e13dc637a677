export { rollRegister } from './gather.js'
export { readRegister } from './read.js'
export { registerTable } from './table.js'
export { importRegister } from './take.js'
