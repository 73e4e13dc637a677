import { Suspense } from 'react'
import { ApiProblem, useBench, useFeed } from '../shared/api/index.js'
import { fit, usePlace } from '../shared/navigation/index.js'
import { Boundary } from './Boundary.js'
import { NotPaired, NowhereHere } from './elsewhere.js'
import { type PageComponent, pages } from './pages.js'
import { routeTable } from './route-table.js'
import { Shell } from './Shell.js'

export function App() {
  const { path } = usePlace()
  const bench = useBench()
  const stranger = bench.error instanceof ApiProblem && bench.error.status === 401
  useFeed(bench.data !== undefined)
  const found = routeTable.flatMap((route) => {
    const params = fit(route.path, path)
    return params ? [{ ...route, params }] : []
  })[0]
  if (stranger && found?.page !== 'pair') return <NotPaired />
  if (!found) return <Shell section={null}>{<NowhereHere path={path} />}</Shell>
  const Page: PageComponent = pages[found.page]
  return (
    <Shell section={found.section} bare={found.page === 'pair'}>
      <Boundary key={path}>
        <Suspense fallback={<p className="quiet waiting">Opening the page …</p>}>
          <Page params={found.params} />
        </Suspense>
      </Boundary>
    </Shell>
  )
}
