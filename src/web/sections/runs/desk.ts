export { NewRunPage } from './plan/NewRunPage.js'
export { RecordPage } from './record/RecordPage.js'
