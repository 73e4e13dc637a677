import { Suspense } from 'react'
import { ApiProblem, useBench, useFeed } from '../shared/api/index.js'
import { fit, usePlace } from '../shared/navigation/index.js'
import { Boundary } from './Boundary.js'
import { NotPaired, NowhereHere } from './elsewhere.js'
import { type PageComponent, pages } from './pages.js'
import { type PageName, routeTable } from './route-table.js'
import { Shell } from './Shell.js'

/** Pages for a device that the bench does not know. */
const FOR_STRANGERS: readonly PageName[] = ['pair', 'order-link']
/** Pages without the ways to others: those for strangers, and a tank at the sink. */
const ALONE: readonly PageName[] = [...FOR_STRANGERS, 'run', 'run-load']

export function App() {
  const { path } = usePlace()
  const bench = useBench()
  const stranger = bench.error instanceof ApiProblem && bench.error.status === 401
  useFeed(bench.data !== undefined)
  const found = routeTable.flatMap((route) => {
    const params = fit(route.path, path)
    return params ? [{ ...route, params }] : []
  })[0]
  if (stranger && !(found && FOR_STRANGERS.includes(found.page))) return <NotPaired />
  if (!found) return <Shell section={null}>{<NowhereHere path={path} />}</Shell>
  const Page: PageComponent = pages[found.page]
  return (
    <Shell section={found.section} bare={ALONE.includes(found.page)}>
      <Boundary key={path}>
        <Suspense fallback={<p className="quiet waiting">Opening the page …</p>}>
          <Page params={found.params} />
        </Suspense>
      </Boundary>
    </Shell>
  )
}
