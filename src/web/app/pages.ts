import { type ComponentType, lazy } from 'react'
import type { PageName } from './route-table.js'

export type PageComponent = ComponentType<{ params: Record<string, string> }>
const today = () => import('../sections/today/index.js')
const times = () => import('../sections/times/index.js')
const shelf = () => import('../sections/shelf/index.js')
const runs = () => import('../sections/runs/index.js')
const atTheSink = () => import('../sections/runs/sink.js')
const paper = () => import('../sections/runs/paper/index.js')
const rolls = () => import('../sections/rolls/index.js')
const lists = () => import('../sections/lists/index.js')
const kit = () => import('../sections/kit/index.js')
const films = () => import('../sections/films/index.js')
const orderLink = () => import('../sections/order-link/index.js')
const house = () => import('../sections/house/index.js')

/** A page of a section, loaded when it is first gone to, with all there is to say. */
const page = <M>(section: () => Promise<M>, pick: (module: M) => PageComponent) =>
  lazy(async () => {
    const [module] = await Promise.all([section(), import('./desk-words.js')])
    return { default: pick(module) }
  })

/** A page for a phone at the sink, which loads no more than a run needs. */
const sinkPage = (pick: (module: Awaited<ReturnType<typeof atTheSink>>) => PageComponent) =>
  lazy(async () => ({ default: pick(await atTheSink()) }))

export const pages: Record<PageName, PageComponent> = {
  today: page(today, (section) => section.TodayPage),
  times: page(times, (section) => section.TimesPage),
  'time-new': page(times, (section) => section.NewTimePage),
  'times-paste': page(times, (section) => section.PastePage),
  time: page(times, (section) => section.TimePage),
  'time-edit': page(times, (section) => section.EditTimePage),
  shelf: page(shelf, (section) => section.ShelfPage),
  products: page(shelf, (section) => section.ProductsPage),
  'product-new': page(shelf, (section) => section.NewProductPage),
  product: page(shelf, (section) => section.ProductPage),
  'product-edit': page(shelf, (section) => section.EditProductPage),
  mix: page(shelf, (section) => section.MixPage),
  waste: page(shelf, (section) => section.WastePage),
  lots: page(shelf, (section) => section.LotsPage),
  lot: page(shelf, (section) => section.LotPage),
  'lot-by-code': page(shelf, (section) => section.ByCodePage),
  'thing-new': page(shelf, (section) => section.NewThingPage),
  thing: page(shelf, (section) => section.ThingPage),
  'thermometer-new': page(shelf, (section) => section.NewThermometerPage),
  thermometer: page(shelf, (section) => section.ThermometerPage),
  'thermometer-edit': page(shelf, (section) => section.EditThermometerPage),
  'class-set': page(shelf, (section) => section.ClassSetPage),
  rolls: page(rolls, (section) => section.RollsPage),
  'roll-new': page(rolls, (section) => section.NewRollPage),
  'rolls-many': page(rolls, (section) => section.ManyPage),
  orders: page(rolls, (section) => section.OrdersPage),
  order: page(rolls, (section) => section.OrderPage),
  'roll-code': page(rolls, (section) => section.CodePage),
  roll: page(rolls, (section) => section.RollPage),
  'roll-edit': page(rolls, (section) => section.EditRollPage),
  kit: page(kit, (section) => section.KitPage),
  'vessel-new': page(kit, (section) => section.NewVesselPage),
  vessel: page(kit, (section) => section.VesselPage),
  films: page(films, (section) => section.FilmsPage),
  film: page(films, (section) => section.FilmPage),
  runs: page(runs, (section) => section.RunsPage),
  'run-new': page(runs, (section) => section.NewRunPage),
  lists: page(lists, (section) => section.ListsPage),
  list: page(lists, (section) => section.ListPage),
  'list-edit': page(lists, (section) => section.EditListPage),
  'list-copy': page(lists, (section) => section.CopyListPage),
  run: sinkPage((section) => section.RunPage),
  'run-load': sinkPage((section) => section.LoadPage),
  'run-paper': page(paper, (section) => section.PaperPage),
  'run-paper-which': page(paper, (section) => section.WhichPage),
  'run-record': page(runs, (section) => section.RecordPage),
  house: page(house, (section) => section.HousePage),
  pair: page(house, (section) => section.PairPage),
  'order-link': page(orderLink, (section) => section.OrderLinkPage),
}
