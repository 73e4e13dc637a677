export { Link } from './Link.js'
export { fit, go, tookStep, usePlace } from './place.js'
