import './times.css'

export { TimePage } from './ask/TimePage.js'
export { EditTimePage } from './form/EditTimePage.js'
export { NewTimePage } from './form/NewTimePage.js'
export { TimesPage } from './list/TimesPage.js'
export { PastePage } from './paste/PastePage.js'
