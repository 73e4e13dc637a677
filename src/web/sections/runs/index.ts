import './runs.css'
import './run/run-screen.css'

export { RunsPage } from './list/RunsPage.js'
export { LoadPage } from './load/LoadPage.js'
export { NewRunPage } from './plan/NewRunPage.js'
export { RecordPage } from './record/RecordPage.js'
export { RunPage } from './run/RunPage.js'
