import './runs.css'
import './run/run-screen.css'

/** The pages at the sink, apart from those for a desk: a phone there loads no more than it needs. */
export { LoadPage } from './load/LoadPage.js'
export { RunPage } from './run/RunPage.js'
