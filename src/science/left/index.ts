export { type Least, type LeftBy, leastOf } from './least.js'
export { type Fills, rollsByVolume } from './volume.js'
