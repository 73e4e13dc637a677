export { basisOf } from './basis.js'
export { correctionFor } from './correction.js'
export { readFactor, settled } from './factor.js'
export { developerOf, nameOf } from './names.js'
