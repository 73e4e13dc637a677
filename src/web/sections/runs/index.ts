import './runs.css'

export { RunsPage } from './list/RunsPage.js'
export { NewRunPage } from './plan/NewRunPage.js'
export { RecordPage } from './record/RecordPage.js'
