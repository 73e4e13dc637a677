import './rolls.css'

export { RollsPage } from './find/RollsPage.js'
export { EditRollPage } from './form/EditRollPage.js'
export { NewRollPage } from './form/NewRollPage.js'
export { ManyPage } from './many/ManyPage.js'
export { RollPage } from './one/RollPage.js'
export { OrderPage } from './orders/OrderPage.js'
export { OrdersPage } from './orders/OrdersPage.js'
