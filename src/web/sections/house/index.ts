import './house.css'

export { HousePage } from './HousePage.js'
export { PairPage } from './PairPage.js'
