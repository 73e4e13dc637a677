/** What the holder of a private link reads: how far the film is, and nothing else. */
export const orderLinkWords = {
  'order-link.title': (_: object) => 'How far your film is',
  'order-link.empty': (_: object) => 'None of it has been taken in yet.',
  'order-link.waiting': (_: object) => 'It is being worked on.',
  'order-link.ready': (_: object) => 'What is here is ready to be fetched.',
  'order-link.over': (_: object) => 'All of it has been handed back.',
  'order-link.dead': (_: object) => 'This link shows nothing',
  'order-link.ask': (_: object) =>
    'It is out of date, was withdrawn, or was not typed whole. Ask where you left your film; your slip stays good.',
  'order-link.private': (_: object) =>
    'This page says how far each roll is and nothing else. Whoever has its address can read it.',
} as const
