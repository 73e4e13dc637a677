export { chooseGround, type Ground, groundChosen, showGround } from './ground.js'
export { freshKey } from './ids.js'
export { keptForTab } from './keep.js'
export { useOnline } from './online.js'
