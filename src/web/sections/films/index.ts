export { FilmPage } from './FilmPage.js'
export { FilmsPage } from './FilmsPage.js'
