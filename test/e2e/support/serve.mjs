// The built server alone, without the launcher's look at what would have to be built first.
import { start } from '../../../dist/server/main.js'

await start([])
