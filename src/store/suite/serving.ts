/** The whole server as a process of its own for the tests; where its data is the environment says. */
import { start } from '../../server/main.js'

await start()
