/** Act or wait: what a control strip asks for, in a sentence. Densities are written to two decimals. */
export const controlWords = {
  'control.leave-alone': (p: { quantity: string; deviation: number }) =>
    `${p.quantity} is ${density(p.deviation)} from its aim. That is chance: leave the process alone.`,
  'control.watch': (p: { quantity: string; deviation: number; warning: number }) =>
    `${p.quantity} is ${density(p.deviation)} from its aim, past the warning of ${plain(p.warning)}. Carry on, and run a strip before the next film that matters.`,
  'control.trend': (p: { quantity: string; deviation: number; moves: number; rising: boolean }) =>
    `${p.quantity} has ${p.rising ? 'risen' : 'fallen'} ${p.moves} times running and stands at ${density(p.deviation)}. Nothing is outside yet; look for the cause now.`,
  'control.second-strip': (p: { quantity: string; deviation: number; limit: number }) =>
    `${p.quantity} is ${density(p.deviation)} from its aim, past the limit of ${density(p.limit)}. Read the strip again, check the bath, and run a second strip before any film.`,
  'control.stop': (p: { quantity: string; deviation: number; limit: number; second: number }) =>
    `Two strips agree: ${p.quantity} is ${density(p.deviation)} and ${density(p.second)} from its aim, past the limit of ${density(p.limit)}. Develop no film until it is put right.`,
  'control.first-strip-wrong': (p: { quantity: string; second: number }) =>
    `The second strip is ${density(p.second)} from its aim, inside the limits. The first was at fault, not the process: leave it alone.`,
  'control.base-fog': (_: object) => 'Base and fog',
  'control.speed-step': (_: object) => 'The speed step',
  'control.contrast': (_: object) => 'Contrast',
  'control.densest': (_: object) => 'The densest step',
} as const

const plain = (value: number): string => Math.abs(value).toFixed(2)
/** Signed, with a true minus; a deviation that rounds to nothing has no sign. */
const density = (value: number): string => {
  const digits = plain(value)
  if (Number(digits) === 0) return digits
  return `${value < 0 ? '−' : '+'}${digits}`
}
