export { type Code, catalogue, type Params, say } from './say.js'
export { plain, type Writer, writerFor } from './writer.js'
