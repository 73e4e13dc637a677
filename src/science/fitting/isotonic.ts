/**
 * The values nearest to the given ones that never fall, by weighted least squares: neighbours in the wrong order
 * are pooled to their mean. Used to take dips out of readings. Linear in the number of values.
 *
 * As many positive weights as values; anything else is a bug and throws.
 * Source: Ayer et al. 1955 (pool adjacent violators).
 */
export function isotonic(values: readonly number[], weights: readonly number[]): number[] {
  if (weights.length !== values.length || weights.some((weight) => !(weight > 0)))
    throw new RangeError(`Pooling needs one positive weight for each of ${values.length} values.`)
  const pools: { mean: number; weight: number; count: number }[] = []
  values.forEach((value, i) => {
    let pool = { mean: value, weight: weights[i] as number, count: 1 }
    for (let last = pools.at(-1); last !== undefined && last.mean >= pool.mean; last = pools.at(-1)) {
      pools.pop()
      const weight = last.weight + pool.weight
      pool = {
        mean: (last.mean * last.weight + pool.mean * pool.weight) / weight,
        weight,
        count: last.count + pool.count,
      }
    }
    pools.push(pool)
  })
  return pools.flatMap(({ mean, count }) => new Array<number>(count).fill(mean))
}
