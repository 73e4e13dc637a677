import './lists.css'

export { CopyListPage } from './form/CopyListPage.js'
export { EditListPage } from './form/EditListPage.js'
export { ListsPage } from './list/ListsPage.js'
export { ListPage } from './one/ListPage.js'
