import './shelf.css'

export { ClassSetPage } from './class-set/ClassSetPage.js'
export { EditThermometerPage } from './form/EditThermometerPage.js'
export { NewThermometerPage } from './form/NewThermometerPage.js'
export { ShelfPage } from './list/ShelfPage.js'
export { ThermometerPage } from './one/ThermometerPage.js'
