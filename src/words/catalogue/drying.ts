type Roll = { number: string; film: string }
type Hung = Roll & { hook: string; at: string }

const where = (hook: string): string => (hook === '' ? '' : ` on ${hook}`)
const grounds = {
  kept: '',
  'own-record': ', as its last rolls were',
  usual: ', if the usual two hours are enough',
} as const

/** Rolls that hang, on the first page. */
export const dryingWords = {
  'drying.to-hang': (p: Roll) => `${p.number} ${p.film} is developed and waits for a hook.`,
  'drying.hangs': (p: Hung & { by: keyof typeof grounds }) =>
    `${p.number} ${p.film} hangs${where(p.hook)} and should be dry at ${p.at}${grounds[p.by]}.`,
  'drying.ready': (p: Hung) => `${p.number} ${p.film}${where(p.hook)} should be dry since ${p.at}: cut and sleeve it.`,
  'drying.hung': (p: { number: string; hook: string }) => `${p.number} hangs${where(p.hook)}.`,
  'drying.sleeved': (p: { number: string }) => `${p.number} is sleeved.`,
  'drying.taken': (p: Roll & { hook: string }) => `${p.number} ${p.film} hangs on ${p.hook} already.`,
} as const
