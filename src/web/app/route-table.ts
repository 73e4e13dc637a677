/** Every page of the program: its path, its name, and the section that is marked in the rail. */
export const routeTable = [
  { page: 'today', path: '/', section: 'today' },
  { page: 'shelf', path: '/shelf', section: 'shelf' },
  { page: 'thermometer-new', path: '/shelf/thermometers/new', section: 'shelf' },
  { page: 'thermometer', path: '/shelf/thermometers/:id', section: 'shelf' },
  { page: 'thermometer-edit', path: '/shelf/thermometers/:id/edit', section: 'shelf' },
  { page: 'class-set', path: '/shelf/class-set', section: 'shelf' },
  { page: 'times', path: '/times', section: 'times' },
  { page: 'time-new', path: '/times/new', section: 'times' },
  { page: 'times-paste', path: '/times/paste', section: 'times' },
  { page: 'time', path: '/times/:id', section: 'times' },
  { page: 'time-edit', path: '/times/:id/edit', section: 'times' },
  { page: 'runs', path: '/runs', section: 'runs' },
  { page: 'run-new', path: '/runs/new', section: 'runs' },
  { page: 'run-paper-which', path: '/runs/paper', section: 'runs' },
  { page: 'lists', path: '/runs/lists', section: 'runs' },
  { page: 'list', path: '/runs/lists/:id', section: 'runs' },
  { page: 'list-edit', path: '/runs/lists/:id/edit', section: 'runs' },
  { page: 'list-copy', path: '/runs/lists/:id/copy', section: 'runs' },
  { page: 'run', path: '/runs/:id', section: 'runs' },
  { page: 'run-load', path: '/runs/:id/load', section: 'runs' },
  { page: 'run-paper', path: '/runs/:id/paper', section: 'runs' },
  { page: 'run-record', path: '/runs/:id/record', section: 'runs' },
  { page: 'house', path: '/house', section: 'house' },
  { page: 'pair', path: '/pair', section: null },
] as const

export type PageName = (typeof routeTable)[number]['page']
export type Section = Exclude<(typeof routeTable)[number]['section'], null>
