export { basisOf } from './basis.js'
export { correctionFor } from './correction.js'
export { readFactor } from './factor.js'
export { developerOf, nameOf } from './names.js'
