export { Link } from './Link.js'
export { fit, go, type Place, tookStep, usePlace } from './place.js'
