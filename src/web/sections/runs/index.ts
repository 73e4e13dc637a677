import './runs.css'
import './run/run-screen.css'

export { RunsPage } from './list/RunsPage.js'
export { LoadPage } from './load/LoadPage.js'
export { RunPage } from './run/RunPage.js'

/** The pages for a desk, apart from those at the sink: a phone there loads no more than it needs. */
export const atTheDesk = () => import('./desk.js')
