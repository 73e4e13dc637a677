type Roll = { number: string; film: string }
type Hung = Roll & { hook: string; at: string }

const where = (hook: string): string => (hook === '' ? '' : ` on ${hook}`)

/** Rolls that hang, on the first page. */
export const dryingWords = {
  'drying.to-hang': (p: Roll) => `${p.number} ${p.film} is developed and waits for a hook.`,
  'drying.hangs': (p: Hung) => `${p.number} ${p.film} hangs${where(p.hook)} and is dry at ${p.at}.`,
  'drying.ready': (p: Hung) => `${p.number} ${p.film}${where(p.hook)} is dry since ${p.at}: cut and sleeve it.`,
  'drying.hung': (p: { number: string; hook: string }) => `${p.number} hangs${where(p.hook)}.`,
  'drying.sleeved': (p: { number: string }) => `${p.number} is sleeved.`,
} as const
