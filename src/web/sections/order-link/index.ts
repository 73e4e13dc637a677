import './order-link.css'

export { OrderLinkPage } from './OrderLinkPage.js'
