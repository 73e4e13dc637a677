import { type ComponentType, lazy } from 'react'
import type { PageName } from './route-table.js'

export type PageComponent = ComponentType<{ params: Record<string, string> }>
const today = () => import('../sections/today/index.js')
const times = () => import('../sections/times/index.js')
const shelf = () => import('../sections/shelf/index.js')
const runs = () => import('../sections/runs/index.js')
const runsAtTheDesk = () => runs().then((section) => section.atTheDesk())
const house = () => import('../sections/house/index.js')

/** A page of a section, loaded when it is first gone to. */
const page = <M>(section: () => Promise<M>, pick: (module: M) => PageComponent) =>
  lazy(() => section().then((module) => ({ default: pick(module) })))

export const pages: Record<PageName, PageComponent> = {
  today: page(today, (section) => section.TodayPage),
  times: page(times, (section) => section.TimesPage),
  'time-new': page(times, (section) => section.NewTimePage),
  'times-paste': page(times, (section) => section.PastePage),
  time: page(times, (section) => section.TimePage),
  'time-edit': page(times, (section) => section.EditTimePage),
  shelf: page(shelf, (section) => section.ShelfPage),
  'thermometer-new': page(shelf, (section) => section.NewThermometerPage),
  thermometer: page(shelf, (section) => section.ThermometerPage),
  'thermometer-edit': page(shelf, (section) => section.EditThermometerPage),
  'class-set': page(shelf, (section) => section.ClassSetPage),
  runs: page(runs, (section) => section.RunsPage),
  'run-new': page(runsAtTheDesk, (section) => section.NewRunPage),
  run: page(runs, (section) => section.RunPage),
  'run-load': page(runs, (section) => section.LoadPage),
  'run-record': page(runsAtTheDesk, (section) => section.RecordPage),
  house: page(house, (section) => section.HousePage),
  pair: page(house, (section) => section.PairPage),
}
