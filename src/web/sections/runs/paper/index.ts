import '../runs.css'
import './paper.css'

/** Typing in a run that was done on paper: loaded by itself, since neither the sink nor the other pages need it. */
export { PaperPage } from './PaperPage.js'
export { WhichPage } from './WhichPage.js'
